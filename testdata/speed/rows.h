/* The tables of testdata/solver, and how far a march is from them. */
#ifndef ROWS_H
#define ROWS_H

#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

#define ROW_S 10.0 /* between rows */
#define MOST_ROWS 400

typedef struct {
	double atS, outletC, returnC, topC, middleC, drawnKJ, chargedKJ, lostKJ, heldKJ;
} Row;

typedef struct {
	int count;
	Row rows[MOST_ROWS];
} Table;

static inline void readTable(Table *t, const char *folder, const char *name)
{
	char path[1024], line[512];
	snprintf(path, sizeof path, "%s/%s.csv", folder, name);
	FILE *f = fopen(path, "r");
	if (!f) {
		perror(path);
		exit(1);
	}
	for (t->count = 0; fgets(line, sizeof line, f);) {
		Row *r = &t->rows[t->count];
		if (sscanf(line, "%lf,%lf,%lf,%lf,%lf,%lf,%lf,%lf,%lf", &r->atS, &r->outletC, &r->returnC, &r->topC, &r->middleC,
			   &r->drawnKJ, &r->chargedKJ, &r->lostKJ, &r->heldKJ) == 9)
			t->count++;
	}
	fclose(f);
}

/* Heat drawn until a moment, kJ: a cubic between rows with the outlet as its slope, as
 * steps do not end where rows stand. */
static inline double drawnAt(const Table *t, double atS, double kWPerK, double mainsC)
{
	int i = (int)fmin(atS / ROW_S, t->count - 2);
	const Row *a = &t->rows[i], *b = a + 1;
	double x = (atS - a->atS) / ROW_S, y = 1 - x;
	double slopeA = kWPerK * (a->outletC - mainsC) * ROW_S, slopeB = kWPerK * (b->outletC - mainsC) * ROW_S;
	return a->drawnKJ * (1 + 2 * x) * y * y + slopeA * x * y * y + b->drawnKJ * x * x * (3 - 2 * x) - slopeB * x * x * y;
}

static inline double outletAt(const Table *t, double atS)
{
	int i = (int)fmin(atS / ROW_S, t->count - 2);
	const Row *a = &t->rows[i];
	return a->outletC + (atS - a->atS) / ROW_S * (a[1].outletC - a->outletC);
}

/* Deviation of a march: of the outlet, root mean square over stretches of a step or of
 * ten seconds, whichever is longer (the mean of the stretch while water is drawn, else
 * its end); and the largest of those of the heat drawn, charged and held. */
typedef struct {
	double squares, outletK, energy, lastS, lastKJ, lastExactKJ;
	int stretches;
} Deviation;

static inline void compareOutlet(Deviation *d, const Table *t, double atS, double drawKgPerS, double mainsC, double drawnJ,
				 double outletC)
{
	if (atS - d->lastS < ROW_S - 1e-6)
		return;
	const double cp = 4182.0; /* J/(kg K), that of the tables */
	double off = outletC - outletAt(t, atS);
	if (drawKgPerS > 0) {
		double kWPerK = drawKgPerS * cp / 1000, exact = drawnAt(t, atS, kWPerK, mainsC);
		off = (drawnJ / 1000 - d->lastKJ - (exact - d->lastExactKJ)) / (kWPerK * (atS - d->lastS));
		d->lastKJ = drawnJ / 1000;
		d->lastExactKJ = exact;
	}
	d->squares += off * off;
	d->stretches++;
	d->lastS = atS;
	d->outletK = sqrt(d->squares / d->stretches);
}

static inline void compareEnergy(Deviation *d, const Table *t, double drawnJ, double chargedJ, double heldJ)
{
	const Row *last = &t->rows[t->count - 1];
	d->energy = fabs(heldJ / 1000 - last->heldKJ) / t->rows[0].heldKJ;
	if (last->drawnKJ > 0)
		d->energy = fmax(d->energy, fabs(drawnJ / 1000 / last->drawnKJ - 1));
	if (last->chargedKJ > 0)
		d->energy = fmax(d->energy, fabs(chargedJ / 1000 / last->chargedKJ - 1));
}

static inline double clockS(clockid_t which)
{
	struct timespec t;
	clock_gettime(which, &t);
	return t.tv_sec + t.tv_nsec * 1e-9;
}

/* The clock on the wall, for what is over before anybody else gets the processor. */
static inline double wallS(void) { return clockS(CLOCK_MONOTONIC); }

/* The time this thread had the processor, for what takes longer. */
static inline double cpuS(void) { return clockS(CLOCK_THREAD_CPUTIME_ID); }

#endif
