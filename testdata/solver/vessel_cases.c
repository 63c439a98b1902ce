/* The four cases of vessel_cases.py again, by CVODE of SUNDIALS (backward
 * differentiation, banded Newton): a second solver against the first.
 *
 * Run by hand with Debian's libsundials-dev:
 *   cc -O2 -o /tmp/vessel_cases vessel_cases.c -lsundials_cvode -lsundials_nvecserial -lm
 *   /tmp/vessel_cases
 * It prints, for each case, the outlet temperature at the end and the root mean
 * square of its difference from the rows of the table that vessel_cases.py wrote,
 * and the heat drawn and held. The equations are those of vessel_cases.py; only the
 * integration is another's. It reads the tables from the working folder.
 */
#include <cvode/cvode.h>
#include <math.h>
#include <nvector/nvector_serial.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sundials/sundials_context.h>
#include <sunlinsol/sunlinsol_band.h>
#include <sunmatrix/sunmatrix_band.h>

#define CP 4182.0
#define KG_PER_L 0.9880
#define EXCHANGE 4000.0
#define SOFT_K 0.01
#define ROOM_C 20.0
#define MAINS_C 10.0
#define BAND 6
#define MOST 400

typedef struct {
	const char *name;
	int compact, n;
	double litres, height, loss, conductivity, stirLow, stirHigh;
	double draw, primary, heatW, ua, coilLow, coilHigh, coilLitres, startC, seconds;
	double cellKg, coilKg, conduct, lossRate;
} Case;

/* Van Leer's harmonic limiter; cells in the order in which the water meets them. */
static double flow(const double *t, int n, int way, int stride, double inC, double rate, double *d)
{
	double inFace = inC;
	int first = way > 0 ? 0 : n - 1;
	for (int k = 0; k < n; k++) {
		int i = first + way * k;
		double here = t[i * stride], face = here;
		double before = here - (k > 0 ? t[(i - way) * stride] : inC);
		double after = k + 1 < n ? t[(i + way) * stride] - here : 0;
		if (before * after > 0)
			face += before * after / (before + after);
		d[i * stride] += rate * (inFace - face);
		inFace = face;
	}
	return inFace;
}

static void rest(const Case *c, const double *t, int stride, int stirring, double *d)
{
	for (int i = 0; i < c->n; i++)
		d[i * stride] += c->lossRate * (ROOM_C - t[i * stride]);
	for (int i = 0; i + 1 < c->n; i++) {
		double rise = t[(i + 1) * stride] - t[i * stride], inverted = fmax(-rise, 0);
		double edge = (i + 1.0) / c->n;
		double heat = c->conduct * rise - EXCHANGE / c->cellKg * inverted * inverted / (inverted + SOFT_K);
		if (stirring && edge > c->stirLow + 1e-9 && edge < c->stirHigh - 1e-9)
			heat += EXCHANGE / c->cellKg * rise;
		d[i * stride] += heat;
		d[(i + 1) * stride] -= heat;
	}
}

/* March of primary water through the coil of a cylinder: from inC, adding to d. */
static double coil(const Case *c, const double *t, double inC, double *d)
{
	double capacity = c->primary * CP, water = inC;
	for (int i = c->n - 1; i >= 0; i--) {
		double share = fmin((i + 1.0) / c->n, c->coilHigh) - fmax((double)i / c->n, c->coilLow);
		if (share <= 0)
			continue;
		double left = exp(-c->ua * share / (c->coilHigh - c->coilLow) / capacity);
		double leaves = t[i] + (water - t[i]) * left;
		if (d)
			d[i] += capacity * (water - leaves) / (c->cellKg * CP);
		water = leaves;
	}
	return water;
}

static double outlet(const Case *c, const double *y)
{
	return c->compact ? y[2 * (c->n - 1) + 1] : y[c->n - 1];
}

static int rates(realtype at, N_Vector yv, N_Vector dv, void *user)
{
	(void)at;
	const Case *c = user;
	const double *y = N_VGetArrayPointer(yv);
	double *d = N_VGetArrayPointer(dv);
	int n = c->n, cells = c->compact ? 2 * n : n;
	memset(d, 0, (cells + 1) * sizeof *d);
	if (!c->compact) {
		if (c->draw > 0)
			d[cells] = flow(y, n, 1, 1, MAINS_C, c->draw / c->cellKg, d);
		if (c->heatW > 0) {
			double none = coil(c, y, 0, NULL), one = coil(c, y, 1, NULL);
			coil(c, y, (c->heatW / (c->primary * CP) + none) / (1 - (one - none)), d);
		}
		rest(c, y, 1, c->draw > 0, d);
		return 0;
	}
	d[cells] = flow(y + 1, n, 1, 2, MAINS_C, c->draw / c->coilKg, d + 1);
	for (int i = 0; i < n; i++) {
		double heat = c->ua / n * (y[2 * i] - y[2 * i + 1]);
		d[2 * i] -= heat / (c->cellKg * CP);
		d[2 * i + 1] += heat / (c->coilKg * CP);
	}
	if (c->heatW > 0)
		flow(y, n, -1, 2, y[0] + c->heatW / (c->primary * CP), c->primary / c->cellKg, d);
	rest(c, y, 2, c->heatW > 0, d);
	return 0;
}

static void start(const Case *c, double *y)
{
	int cells = c->compact ? 2 * c->n : c->n;
	for (int i = 0; i < cells; i++)
		y[i] = c->startC;
	if (c->startC == 0) /* 12 C to 40 % of the height, 48 C from 50 %: cell means */
		for (int i = 0; i < c->n; i++) {
			double sum = 0;
			for (int k = 0; k < 100; k++)
				sum += fmin(fmax(12 + 36 * ((i + (k + 0.5) / 100) / c->n - 0.4) / 0.1, 12), 48);
			y[i] = sum / 100;
		}
	y[cells] = 0;
}

static double heldKJ(const Case *c, const double *y)
{
	double sum = 0;
	for (int i = 0; i < c->n; i++)
		sum += c->compact ? y[2 * i] * c->cellKg + y[2 * i + 1] * c->coilKg : y[i] * c->cellKg;
	return sum * CP / 1000;
}

static void run(Case *c, SUNContext sun)
{
	double area = c->litres / 1000 / c->height;
	c->cellKg = c->litres * KG_PER_L / c->n;
	c->coilKg = c->coilLitres * KG_PER_L / c->n;
	c->conduct = c->conductivity * area / (c->height / c->n) / (c->cellKg * CP);
	c->lossRate = c->loss / c->n / (c->cellKg * CP);
	int size = (c->compact ? 2 : 1) * c->n + 1;
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
	double drawn = c->draw * CP * (v[size - 1] - MAINS_C * c->seconds) / 1000;
	printf("%s: outlet %.4f C at the end, %.4f K rms from the table; drawn %.2f kJ (table %.2f), held %.2f kJ (table %.2f)\n",
	       c->name, outlet(c, v), sqrt(squares / rows), c->draw > 0 ? drawn : 0, theirDrawn, heldKJ(c, v), theirHeld);
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
	Case cylinder = {.n = 300, .litres = 210, .height = 1.32, .loss = 61.4 / 45, .conductivity = 1.2,
			 .stirLow = 0, .stirHigh = 0.15, .ua = 1130, .coilLow = 0.05, .coilHigh = 0.60};
	Case compact = {.compact = 1, .n = 160, .litres = 60 - 18.9, .height = 0.5, .loss = 42.5 / 45, .conductivity = 1.2,
			.stirLow = 0.8, .stirHigh = 1, .ua = 1800, .coilLitres = 12.3, .draw = 0.12, .primary = 17.0 / 60,
			.startC = 55, .seconds = 600};
	Case draw = cylinder, reheat = cylinder, off = compact, charged = compact;
	draw.name = "cylinder_draw", draw.draw = 0.15, draw.startC = 48, draw.seconds = 1500;
	reheat.name = "cylinder_reheat", reheat.primary = 17.0 / 60, reheat.heatW = 5000, reheat.seconds = 3600;
	off.name = "compact_draw";
	charged.name = "compact_draw_charged", charged.heatW = 8000;
	run(&off, sun);
	run(&charged, sun);
	run(&draw, sun);
	run(&reheat, sun);
	SUNContext_Free(&sun);
	return 0;
}
