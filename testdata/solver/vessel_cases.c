/* The four cases of vessel_cases.py again, by CVODE of SUNDIALS (backward
 * differentiation, banded Newton): a second solver against the first.
 *
 * Run by hand with Debian's libsundials-dev:
 *   cc -O2 -o /tmp/vessel_cases vessel_cases.c -lsundials_cvode -lsundials_nvecserial -lm
 *   /tmp/vessel_cases
 * It prints, for each case, the outlet temperature at the end and the root mean
 * square of its difference from the rows of the table that vessel_cases.py wrote,
 * and the heat drawn and held. The equations (vessel_rates.h) are those of vessel_cases.py;
 * only the integration is another's. It reads the tables from the working folder.
 */
#include "vessel_rates.h"

#include <cvode/cvode.h>
#include <stdio.h>
#include <sundials/sundials_context.h>
#include <sunlinsol/sunlinsol_band.h>
#include <sunmatrix/sunmatrix_band.h>

#define BAND 6

static void run(Case *c, SUNContext sun)
{
	int size = sizeOf(c);
	N_Vector y = N_VNew_Serial(size, sun);
	double *v = N_VGetArrayPointer(y);
	start(c, v);
	SUNMatrix m = SUNBandMatrix(size, BAND, BAND, sun);
	SUNLinearSolver linear = SUNLinSol_Band(y, m, sun);
	void *solver = CVodeCreate(CV_BDF, sun);
	CVodeInit(solver, rates, 0, y);
	CVodeSStolerances(solver, 1e-7, 1e-7);
	CVodeSetUserData(solver, c);
	CVodeSetLinearSolver(solver, linear, m);
	CVodeSetMaxNumSteps(solver, 10000000);
	CVodeSetMaxStep(solver, 1);
	char path[64], line[512];
	snprintf(path, sizeof path, "%s.csv", c->name);
	FILE *f = fopen(path, "r");
	if (!f) {
		perror(path);
		exit(1);
	}
	double squares = 0, theirDrawn = 0, theirHeld = 0;
	int rows = 0;
	while (fgets(line, sizeof line, f)) {
		double at, outC, a, b, e, charged, lost;
		if (sscanf(line, "%lf,%lf,%lf,%lf,%lf,%lf,%lf,%lf,%lf", &at, &outC, &a, &b, &e, &theirDrawn, &charged, &lost, &theirHeld) != 9)
			continue;
		realtype reached = 0;
		if (at > 0 && CVode(solver, at, y, &reached, CV_NORMAL) < 0)
			exit(1);
		squares += (outlet(c, v) - outC) * (outlet(c, v) - outC);
		rows++;
	}
	printf("%s: outlet %.4f C at the end, %.4f K rms from the table; drawn %.2f kJ (table %.2f), held %.2f kJ (table %.2f)\n",
	       c->name, outlet(c, v), sqrt(squares / rows), drawnKJ(c, v, c->seconds), theirDrawn, heldKJ(c, v), theirHeld);
	fclose(f);
	CVodeFree(&solver);
	SUNLinSolFree(linear);
	SUNMatDestroy(m);
	N_VDestroy(y);
}

int main(void)
{
	SUNContext sun;
	SUNContext_Create(NULL, &sun);
	Case cases[CASES];
	makeCases(cases);
	for (int i = 0; i < CASES; i++)
		run(&cases[i], sun);
	SUNContext_Free(&sun);
	return 0;
}
