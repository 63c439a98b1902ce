/* The right-hand sides of vessel_cases.py in C, for the solvers of SUNDIALS: shared by
 * vessel_cases.c, which holds one solver against the other, and by ../speed/cvode.c,
 * which times one. Strength and softness of the mixing of inverted cells are the
 * case's: a solver that is to be quick takes them milder.
 */
#ifndef VESSEL_RATES_H
#define VESSEL_RATES_H

#include <math.h>
#include <nvector/nvector_serial.h>
#include <stdlib.h>
#include <string.h>

#define CP 4182.0
#define KG_PER_L 0.9880
#define EXCHANGE 4000.0 /* kg/s between cells that mix */
#define SOFT_K 0.01	/* below this difference the exchange of buoyancy fades out */
#define ROOM_C 20.0
#define MAINS_C 10.0
#define CASES 4
#define MOST 400 /* cells */

typedef struct {
	const char *name;
	int compact, n;
	double litres, height, loss, conductivity, stirLow, stirHigh;
	double draw, primary, heatW, ua, coilLow, coilHigh, coilLitres, startC, seconds;
	double exchange, softK;
	double cellKg, coilKg, conduct, lossRate;
	double left[MOST]; /* share of its difference that a cell leaves in the primary water */
} Case;

/* Van Leer's harmonic limiter; cells in the order in which the water meets them. */
static inline double flow(const double *t, int n, int way, int stride, double inC, double rate, double *d)
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

static inline void rest(const Case *c, const double *t, int stride, int stirring, double *d)
{
	for (int i = 0; i < c->n; i++)
		d[i * stride] += c->lossRate * (ROOM_C - t[i * stride]);
	for (int i = 0; i + 1 < c->n; i++) {
		double rise = t[(i + 1) * stride] - t[i * stride], inverted = fmax(-rise, 0);
		double edge = (i + 1.0) / c->n;
		double heat = c->conduct * rise - c->exchange / c->cellKg * inverted * inverted / (inverted + c->softK);
		if (stirring && edge > c->stirLow + 1e-9 && edge < c->stirHigh - 1e-9)
			heat += c->exchange / c->cellKg * rise;
		d[i * stride] += heat;
		d[(i + 1) * stride] -= heat;
	}
}

/* March of primary water through the coil of a cylinder: from inC, adding to d. */
static inline double coil(const Case *c, const double *t, double inC, double *d)
{
	double water = inC, perCell = c->primary / c->cellKg;
	for (int i = c->n - 1; i >= 0; i--) {
		double leaves = t[i] + (water - t[i]) * c->left[i];
		if (d)
			d[i] += perCell * (water - leaves);
		water = leaves;
	}
	return water;
}

static inline double outlet(const Case *c, const double *y)
{
	return c->compact ? y[2 * (c->n - 1) + 1] : y[c->n - 1];
}

static inline int rates(realtype at, N_Vector yv, N_Vector dv, void *user)
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

static inline void start(const Case *c, double *y)
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

static inline double heldKJ(const Case *c, const double *y)
{
	double sum = 0;
	for (int i = 0; i < c->n; i++)
		sum += c->compact ? y[2 * i] * c->cellKg + y[2 * i + 1] * c->coilKg : y[i] * c->cellKg;
	return sum * CP / 1000;
}

/* Cells of a case, and what follows from their number. */
static inline void cut(Case *c, int n)
{
	double area = c->litres / 1000 / c->height;
	c->n = n;
	c->cellKg = c->litres * KG_PER_L / n;
	c->coilKg = c->coilLitres * KG_PER_L / n;
	c->conduct = c->conductivity * area / (c->height / n) / (c->cellKg * CP);
	c->lossRate = c->loss / n / (c->cellKg * CP);
	for (int i = 0; i < n && c->coilHigh > 0; i++) {
		double share = fmin((i + 1.0) / n, c->coilHigh) - fmax((double)i / n, c->coilLow);
		c->left[i] = exp(-c->ua * fmax(share, 0) / (c->coilHigh - c->coilLow) / (c->primary * CP));
	}
}

/* Cells, and the integral of the outlet's temperature. */
static inline int sizeOf(const Case *c) { return (c->compact ? 2 : 1) * c->n + 1; }

static inline double drawnKJ(const Case *c, const double *y, double atS)
{
	return c->draw > 0 ? c->draw * CP * (y[sizeOf(c) - 1] - MAINS_C * atS) / 1000 : 0;
}

/* The four cases at the cells of vessel_cases.py. */
static inline void makeCases(Case list[CASES])
{
	Case cylinder = {.n = 300, .litres = 210, .height = 1.32, .loss = 61.4 / 45, .conductivity = 1.2,
			 .exchange = EXCHANGE, .softK = SOFT_K,
			 .stirLow = 0, .stirHigh = 0.15, .ua = 1130, .coilLow = 0.05, .coilHigh = 0.60};
	Case compact = {.compact = 1, .n = 160, .litres = 60 - 18.9, .height = 0.5, .loss = 42.5 / 45, .conductivity = 1.2,
			.exchange = EXCHANGE, .softK = SOFT_K,
			.stirLow = 0.8, .stirHigh = 1, .ua = 1800, .coilLitres = 12.3, .draw = 0.12, .primary = 17.0 / 60,
			.startC = 55, .seconds = 600};
	Case draw = cylinder, reheat = cylinder, off = compact, charged = compact;
	off.name = "compact_draw";
	charged.name = "compact_draw_charged", charged.heatW = 8000;
	draw.name = "cylinder_draw", draw.draw = 0.15, draw.startC = 48, draw.seconds = 1500;
	reheat.name = "cylinder_reheat", reheat.primary = 17.0 / 60, reheat.heatW = 5000, reheat.seconds = 3600;
	list[0] = off, list[1] = charged, list[2] = draw, list[3] = reheat;
	for (int i = 0; i < CASES; i++)
		cut(&list[i], list[i].n);
}

#endif
