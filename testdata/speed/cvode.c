/* The four cases of testdata/solver by CVODE of SUNDIALS: time and error.
 *
 *   cvode FOLDER NAME LAYERS OUTLET_K ENERGY
 *
 * tries methods, cells, tolerances and strengths of mixing, and prints the fastest way
 * that keeps within OUTLET_K and ENERGY (LAYERS cells or up to three times as many): label,
 * case, mean step in s, cells, ns for the case, error of the outlet in K, of the energy as
 * a share, and the way: method, tolerance in K, mixing in kg/s. Nothing if none does.
 *
 * The methods: backward differentiation and Adams with a banded Newton iteration, and
 * Adams with a fixed-point iteration. The equations are those of vessel_rates.h, whose
 * mixing is very strong so that its tables are exact; strength is a price for a solver
 * of stiff equations, so that milder ones are tried too. The whole case is one call.
 */
#define _POSIX_C_SOURCE 199309L
#include "../solver/vessel_rates.h"
#include "rows.h"

#include <cvode/cvode.h>
#include <sundials/sundials_context.h>
#include <sunlinsol/sunlinsol_band.h>
#include <sunmatrix/sunmatrix_band.h>
#include <sunnonlinsol/sunnonlinsol_fixedpoint.h>

typedef enum { BDF, ADAMS, ADAMS_FIXED_POINT, METHODS } Method;
static const char *const methods[] = {"BDF, banded", "Adams, banded", "Adams, fixed point"};

typedef struct {
	Case *c;
	N_Vector y;
	double *v;
	SUNMatrix matrix;
	SUNLinearSolver linear;
	SUNNonlinearSolver fixedPoint;
	void *memory;
} Solver;

typedef struct {
	Method method;
	int cells;
	double toleranceK, exchange, softK, ns;
	long steps;
	Deviation off;
} Way;

static void quiet(int code, const char *module, const char *function, char *message, void *data)
{
	(void)code, (void)module, (void)function, (void)message, (void)data;
}

static void openSolver(Solver *s, Case *c, const Way *w, long mostSteps, SUNContext sun)
{
	c->exchange = w->exchange, c->softK = w->softK;
	cut(c, w->cells);
	int size = sizeOf(c), band = c->compact ? 4 : 2; /* two cells either way act through the limiter */
	s->c = c;
	s->y = N_VNew_Serial(size, sun);
	s->v = N_VGetArrayPointer(s->y);
	start(c, s->v);
	s->matrix = SUNBandMatrix(size, band, band, sun);
	s->linear = SUNLinSol_Band(s->y, s->matrix, sun);
	s->fixedPoint = SUNNonlinSol_FixedPoint(s->y, 0, sun);
	s->memory = CVodeCreate(w->method == BDF ? CV_BDF : CV_ADAMS, sun);
	CVodeInit(s->memory, rates, 0, s->y);
	CVodeSetErrHandlerFn(s->memory, quiet, NULL);
	CVodeSStolerances(s->memory, 0, w->toleranceK);
	CVodeSetUserData(s->memory, c);
	CVodeSetMaxNumSteps(s->memory, mostSteps);
	if (w->method == ADAMS_FIXED_POINT)
		CVodeSetNonlinearSolver(s->memory, s->fixedPoint);
	else
		CVodeSetLinearSolver(s->memory, s->linear, s->matrix);
}

static void again(Solver *s)
{
	start(s->c, s->v);
	CVodeReInit(s->memory, 0, s->y);
}

static int reach(Solver *s, double atS)
{
	realtype reached;
	return CVode(s->memory, atS, s->y, &reached, CV_NORMAL) >= 0;
}

static void closeSolver(Solver *s)
{
	CVodeFree(&s->memory);
	SUNNonlinSolFree(s->fixedPoint);
	SUNLinSolFree(s->linear);
	SUNMatDestroy(s->matrix);
	N_VDestroy(s->y);
}

/* Time of one run, ns; infinite if the solver gave up. */
static double once(Solver *s, double seconds)
{
	again(s);
	double t = cpuS();
	return reach(s, seconds) ? (cpuS() - t) * 1e9 : INFINITY;
}

static int deviates(Solver *s, const Table *t, Deviation *d)
{
	const Case *c = s->c;
	*d = (Deviation){0};
	again(s);
	for (int i = 1; i < t->count; i++) {
		double atS = t->rows[i].atS;
		if (!reach(s, atS))
			return 1;
		compareOutlet(d, t, atS, c->draw, MAINS_C, drawnKJ(c, s->v, atS) * 1000, outlet(c, s->v));
	}
	compareEnergy(d, t, drawnKJ(c, s->v, c->seconds) * 1000, c->heatW * c->seconds, heldKJ(c, s->v) * 1000);
	return 0;
}

/* Tries a way; keeps it in best if it holds the limits and is faster. */
static void attempt(Case *c, const Table *t, SUNContext sun, Way w, double outletK, double energy, Way *best)
{
	Solver s;
	/* A step costs much the same whatever the way: one of many times the best's is none. */
	openSolver(&s, c, &w, isfinite(best->ns) ? 6 * best->steps : 20000, sun);
	for (int i = 0; i < 3; i++) /* the first run is a slow one */
		w.ns = fmin(i == 0 ? INFINITY : w.ns, once(&s, c->seconds));
	int worthwhile = isfinite(w.ns) && w.ns < 1.5 * best->ns;
	if (worthwhile && !deviates(&s, t, &w.off) && w.off.outletK <= outletK && w.off.energy <= energy) {
		for (int i = 0; i < 20; i++)
			w.ns = fmin(w.ns, once(&s, c->seconds));
		CVodeGetNumSteps(s.memory, &w.steps);
		if (w.ns < best->ns)
			*best = w;
	}
	closeSolver(&s);
}

int main(int argc, char **argv)
{
	static const double tolerances[] = {1e-1, 3e-2, 1e-2, 3e-3, 1e-3, 1e-4, 1e-5};
	/* Strength in kg/s, and below which difference it fades, K: the last are those of the tables. */
	static const double mixing[][2] = {{1, 0.3}, {1, 0.01}, {10, 0.3}, {10, 0.01}, {100, 0.3}, {100, 0.01}, {4000, 0.01}};
	static const double shares[] = {1, 1.5, 2, 3};
	if (argc != 6) {
		fprintf(stderr, "usage: cvode FOLDER NAME LAYERS OUTLET_K ENERGY\n");
		return 2;
	}
	SUNContext sun;
	SUNContext_Create(NULL, &sun);
	static Case cases[CASES];
	static Table t;
	makeCases(cases);
	Way best = {.ns = INFINITY};
	double seconds = 0;
	for (int k = 0; k < CASES; k++) {
		if (strcmp(cases[k].name, argv[2]) != 0)
			continue;
		readTable(&t, argv[1], argv[2]);
		seconds = cases[k].seconds;
		for (int n = 0; n < 4; n++)
			for (Method method = BDF; method < METHODS; method++)
				for (int i = 0; i < 7; i++)
					for (size_t e = 0; e < sizeof mixing / sizeof *mixing; e++) {
						Way w = {.method = method, .cells = (int)(atoi(argv[3]) * shares[n]),
							 .toleranceK = tolerances[i], .exchange = mixing[e][0], .softK = mixing[e][1]};
						attempt(&cases[k], &t, sun, w, atof(argv[4]), atof(argv[5]), &best);
					}
	}
	if (isfinite(best.ns))
		printf("cvode %s %.3g %d %.0f %.4f %.6f %s, %g K, %g kg/s\n", argv[2], seconds / best.steps, best.cells, best.ns,
		       best.off.outletK, best.off.energy, methods[best.method], best.toleranceK, best.exchange);
	SUNContext_Free(&sun);
	return 0;
}
