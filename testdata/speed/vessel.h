/* A stratified vessel in plain C, marched in fixed steps: the equations of
 * compare/vessel as an engineer would write them down without more ado. Layers count
 * from the bottom; heat counts from 0 C; specific heat and mass are constant.
 *
 * A step takes one effect after the other: loss (exact), flow (finite volumes, second
 * order, limited), stirring at the inlet, exchange between coil and body (exact for a
 * layer and its coil cell), conduction (explicit), buoyancy (inverted layers mix).
 * What depends on the length of the step alone is worked out once. The loops are
 * written so that gcc turns them into vector instructions: arrays of faces, no early
 * exits, no sums where none are needed.
 */
#ifndef VESSEL_H
#define VESSEL_H

#include <math.h>

#define CP 4182.0	/* J/(kg K), water of 10 to 60 C (IAPWS-95), as compare/water */
#define KG_PER_L 0.9880 /* water at 50 C (IAPWS-95), as compare/water */
#define MOST 256	/* layers */
#define GHOSTS 8	/* room beside the layers; the flow needs two on either side */

/* How the temperature at a face between two cells is found. */
typedef enum {
	SMOOTH, /* van Leer's harmonic limiter (from memory): the usual choice */
	SHARP	/* the rule of compare/vessel/advect.go, which keeps a front within a layer */
} Faces;

typedef struct {
	int n;
	Faces faces;
	double kg;	 /* water in a layer */
	double jPerK;	 /* and its heat capacity */
	double conduct;	 /* share of a difference that conduction moves in a step */
	double lossKept; /* share of the excess over the room that a step leaves */
	double beyondC;	 /* of the water that left last */
	double cells[MOST + 2 * GHOSTS];
} Body;

static inline void makeBody(Body *b, int n, Faces faces, double litres, double heightM, double wPerMK, double lossWPerK,
			    double dt)
{
	double areaM2 = litres / 1000 / heightM;
	b->n = n;
	b->faces = faces;
	b->kg = litres * KG_PER_L / n;
	b->jPerK = b->kg * CP;
	b->conduct = wPerMK * areaM2 / (heightM / n) / b->jPerK * dt;
	b->lossKept = exp(-lossWPerK / n / b->jPerK * dt);
}

static inline double *layers(Body *b) { return b->cells + GHOSTS; }

static inline void fill(Body *b, double c)
{
	for (int i = 0; i < b->n; i++)
		layers(b)[i] = c;
	b->beyondC = c;
}

static inline double sumC(Body *b)
{
	double sum = 0;
	for (int i = 0; i < b->n; i++)
		sum += layers(b)[i];
	return sum;
}

static inline double heldJ(Body *b) { return sumC(b) * b->jPerK; }

static inline void lose(Body *b, double roomC)
{
	double *t = layers(b), kept = b->lossKept, gain = (1 - kept) * roomC;
	for (int i = 0; i < b->n; i++)
		t[i] = t[i] * kept + gain;
}

static inline double nearer(double a, double b) { return fabs(a) < fabs(b) ? a : b; }

static inline double smoothFace(double up, double t, double down, double c)
{
	double slope = t - up, rise = down - t, product = slope * rise;
	return product > 0 ? t + (1 - c) * product / (slope + rise) : t;
}

static inline double sharpFace(double far, double up, double t, double down, double further, double c, double reach)
{
	double slope = t - up, rise = down - t, both = slope + rise;
	if (!(slope * rise > 0))
		return t;
	double smooth = (1 - c) / 2 * nearer(nearer(2 * slope, 2 * rise), both / 2);
	double sharp = nearer(rise, slope * reach);
	double share = 4 * (fabs(up - far) + fabs(further - down)) / fabs(both);
	return share >= 1 ? t + smooth : t + sharp + share * (smooth - sharp);
}

/* Moves the water of a body up by the share c, at most 1, of a layer: water at inC
 * comes in, the mean temperature of what leaves is returned. */
static inline double rise(Body *b, double c, double inC)
{
	double *t = layers(b), face[MOST + 1];
	int n = b->n;
	t[-2] = t[-1] = inC, t[n] = t[n + 1] = b->beyondC;
	face[0] = inC;
	if (b->faces == SMOOTH)
		for (int i = 0; i < n; i++)
			face[i + 1] = smoothFace(t[i - 1], t[i], t[i + 1], c);
	else
		for (int i = 0; i < n; i++)
			face[i + 1] = sharpFace(t[i - 2], t[i - 1], t[i], t[i + 1], t[i + 2], c, 1 / c - 1);
	for (int i = 0; i < n; i++)
		t[i] += c * (face[i] - face[i + 1]);
	return b->beyondC = face[n];
}

/* The same with the water moving down. */
static inline double sink(Body *b, double c, double inC)
{
	double *t = layers(b), face[MOST + 1];
	int n = b->n;
	t[n] = t[n + 1] = inC, t[-2] = t[-1] = b->beyondC;
	face[n] = inC;
	if (b->faces == SMOOTH)
		for (int i = 0; i < n; i++)
			face[i] = smoothFace(t[i + 1], t[i], t[i - 1], c);
	else
		for (int i = 0; i < n; i++)
			face[i] = sharpFace(t[i + 2], t[i + 1], t[i], t[i - 1], t[i - 2], c, 1 / c - 1);
	for (int i = 0; i < n; i++)
		t[i] += c * (face[i + 1] - face[i]);
	return b->beyondC = face[0];
}

/* The same for any amount, in parts of no more than a layer. */
static inline double move(Body *b, double (*way)(Body *, double, double), double layersMoved, double inC)
{
	if (layersMoved <= 1)
		return way(b, layersMoved, inC);
	int parts = (int)ceil(layersMoved);
	double out = 0;
	for (int i = 0; i < parts; i++)
		out += way(b, layersMoved / parts, inC);
	return out / parts;
}

/* Mixes the whole layers of a stirred zone, from first on, and lets the next, of which a
 * part belongs to it, exchange with them in proportion to the flow. */
static inline void stir(double *first, double *next, double zone, double layersMoved)
{
	double mean = 0;
	int whole = (int)(zone + 1e-9);
	for (int i = 0; i < whole; i++)
		mean += first[i] / whole;
	double part = zone - whole, pair = whole / (whole + 1.0), moved = 0;
	if (part > 1e-9)
		moved = (*next - mean) * pair * (1 - exp(-part / (1 - part) * layersMoved / pair));
	*next -= moved;
	for (int i = 0; i < whole; i++)
		first[i] = mean + moved / whole;
}

static inline void stirLow(Body *b, double zone, double layersMoved)
{
	stir(layers(b), layers(b) + (int)(zone + 1e-9), zone, layersMoved);
}

static inline void stirHigh(Body *b, double zone, double layersMoved)
{
	double *first = layers(b) + b->n - (int)(zone + 1e-9);
	stir(first, first - 1, zone, layersMoved);
}

static inline void conduct(Body *b)
{
	double *t = layers(b), up[MOST + 1];
	int n = b->n;
	up[0] = up[n] = 0;
	for (int i = 1; i < n; i++)
		up[i] = b->conduct * (t[i - 1] - t[i]);
	for (int i = 0; i < n; i++)
		t[i] += up[i] - up[i + 1];
}

/* Inverted layers mix until none is warmer than the one above. */
static inline void settle(Body *b)
{
	double *t = layers(b), sum[MOST];
	int count[MOST], top = -1, inverted = 0;
	for (int i = 1; i < b->n; i++)
		inverted |= t[i - 1] > t[i];
	if (!inverted)
		return;
	for (int i = 0; i < b->n; i++) {
		sum[++top] = t[i], count[top] = 1;
		for (; top > 0 && sum[top - 1] * count[top] > sum[top] * count[top - 1]; top--) {
			sum[top - 1] += sum[top];
			count[top - 1] += count[top];
		}
	}
	for (int p = 0, i = 0; p <= top; p++)
		for (int k = 0; k < count[p]; k++)
			t[i++] = sum[p] / count[p];
}

/* What a layer and the coil water in it exchange in a step. */
typedef struct {
	double fromBody, toCoil;
} Pair;

static inline Pair pairOf(const Body *body, const Body *coil, double uaWPerK, double dt)
{
	double perJK = 1 / body->jPerK + 1 / coil->jPerK;
	double moved = (1 - exp(-uaWPerK / body->n * perJK * dt)) / perJK;
	return (Pair){moved / body->jPerK, moved / coil->jPerK};
}

static inline void exchange(Body *body, Body *coil, Pair p)
{
	double *t = layers(body), *w = layers(coil);
	for (int i = 0; i < body->n; i++) {
		double gap = t[i] - w[i];
		t[i] -= gap * p.fromBody;
		w[i] += gap * p.toCoil;
	}
}

/* An indirect coil: primary water passes the layers about it from top to bottom. */
typedef struct {
	int first, count;
	double wPerK;	   /* m cp of the primary water */
	double left[MOST]; /* share of its difference that a layer leaves in the water */
} Indirect;

static inline void makeIndirect(Indirect *x, int n, double uaWPerK, double low, double high, double kgPerS)
{
	x->count = 0;
	x->wPerK = kgPerS * CP;
	for (int i = 0; i < n; i++) {
		double share = (fmin((i + 1.0) / n, high) - fmax((double)i / n, low)) / (high - low);
		if (share <= 0)
			continue;
		if (x->count == 0)
			x->first = i;
		x->left[x->count++] = exp(-uaWPerK * share / x->wPerK);
	}
}

/* Return = slope * flow + intercept. */
static inline double returnLine(const Indirect *x, Body *b, double *slope)
{
	const double *t = layers(b) + x->first;
	double intercept = 0;
	*slope = 1;
	for (int i = x->count - 1; i >= 0; i--) {
		intercept = t[i] + (intercept - t[i]) * x->left[i];
		*slope *= x->left[i];
	}
	return intercept;
}

/* Heats the layers for dt and gives the heat, J. */
static inline double heatThrough(const Indirect *x, Body *b, double flowC, double dt)
{
	double *t = layers(b) + x->first, water = flowC, perLayer = x->wPerK * dt / b->jPerK;
	for (int i = x->count - 1; i >= 0; i--) {
		double leaves = t[i] + (water - t[i]) * x->left[i];
		t[i] += perLayer * (water - leaves);
		water = leaves;
	}
	return x->wPerK * dt * (flowC - water);
}

#endif
