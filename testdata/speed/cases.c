/* The four cases of testdata/solver by the plain march of vessel.h: time and error.
 *
 *   cases FOLDER NAME LAYERS FINE_LAYERS OUTLET_K ENERGY
 *
 * prints a line for each of two programs: "fair" (LAYERS, and the step and the faces that
 * are fastest of all that keep within OUTLET_K and ENERGY in this case) and "fine"
 * (FINE_LAYERS at 1 s): label, case, step in s, layers, ns for the case, error of the
 * outlet in K, of the energy as a share, and how faces are found.
 */
#define _POSIX_C_SOURCE 199309L
#include "rows.h"
#include "vessel.h"

#define ROOM_C 20.0
#define MAINS_C 10.0
#define PRIMARY_KG_PER_S (17.0 / 60)

/* The cases of testdata/solver/vessel_cases.py. */
typedef struct {
	const char *name;
	int compact;
	double drawKgPerS, heatW, startC, seconds;
} Case;

static const Case cases[] = {
	{"compact_draw", 1, 0.12, 0, 55, 600},
	{"compact_draw_charged", 1, 0.12, 8000, 55, 600},
	{"cylinder_draw", 0, 0.15, 0, 48, 1500},
	{"cylinder_reheat", 0, 0, 5000, 0, 3600},
};

typedef struct {
	Case c;
	double dt, zone; /* stirred layers */
	Body body, coil;
	Pair pair;
	Indirect indirect;
	double drawnJ, chargedJ;
} March;

/* 12 C to 40 % of the height, 48 C from 50 %: means of the layers. */
static void fillRamp(Body *b)
{
	for (int i = 0; i < b->n; i++) {
		double sum = 0;
		for (int k = 0; k < 100; k++)
			sum += fmin(fmax(12 + 36 * ((i + (k + 0.5) / 100) / b->n - 0.4) / 0.1, 12), 48);
		layers(b)[i] = sum / 100;
	}
	b->beyondC = 48;
}

static void begin(March *m, const Case *c, int n, double dt, Faces faces)
{
	m->c = *c, m->dt = dt;
	m->drawnJ = m->chargedJ = 0;
	if (c->compact) {
		makeBody(&m->body, n, faces, 60 - 18.9, 0.5, 1.2, 42.5 / 45, dt);
		makeBody(&m->coil, n, faces, 12.3, 0.5, 0, 0, dt);
		fill(&m->coil, c->startC);
		m->pair = pairOf(&m->body, &m->coil, 1800, dt);
		m->zone = 0.20 * n;
	} else {
		makeBody(&m->body, n, faces, 210, 1.32, 1.2, 61.4 / 45, dt);
		makeIndirect(&m->indirect, n, 1130, 0.05, 0.60, PRIMARY_KG_PER_S);
		m->zone = 0.15 * n;
	}
	if (c->startC > 0)
		fill(&m->body, c->startC);
	else
		fillRamp(&m->body);
}

static void stepCompact(March *m)
{
	Body *b = &m->body;
	lose(b, ROOM_C);
	double kg = m->c.drawKgPerS * m->dt;
	m->drawnJ += kg * CP * (move(&m->coil, rise, kg / m->coil.kg, MAINS_C) - MAINS_C);
	exchange(b, &m->coil, m->pair);
	if (m->c.heatW > 0) {
		double charge = PRIMARY_KG_PER_S * m->dt, flowC = layers(b)[0] + m->c.heatW / (PRIMARY_KG_PER_S * CP);
		m->chargedJ += charge * CP * (flowC - move(b, sink, charge / b->kg, flowC));
		stirHigh(b, m->zone, charge / b->kg);
	}
	conduct(b);
	settle(b);
}

static void stepCylinder(March *m)
{
	Body *b = &m->body;
	lose(b, ROOM_C);
	if (m->c.heatW > 0) {
		double slope, intercept = returnLine(&m->indirect, b, &slope);
		double flowC = (m->c.heatW / m->indirect.wPerK + intercept) / (1 - slope);
		m->chargedJ += heatThrough(&m->indirect, b, flowC, m->dt);
	}
	if (m->c.drawKgPerS > 0) {
		double kg = m->c.drawKgPerS * m->dt;
		m->drawnJ += kg * CP * (move(b, rise, kg / b->kg, MAINS_C) - MAINS_C);
		stirLow(b, m->zone, kg / b->kg);
	}
	conduct(b);
	settle(b);
}

static void march(March *m, int steps)
{
	if (m->c.compact)
		for (int i = 0; i < steps; i++)
			stepCompact(m);
	else
		for (int i = 0; i < steps; i++)
			stepCylinder(m);
}

static int stepsOf(const Case *c, double dt) { return (int)lround(c->seconds / dt); }

static Deviation deviationOf(March *m, const Table *t)
{
	Deviation d = {0};
	for (int i = 1; i <= stepsOf(&m->c, m->dt); i++) {
		march(m, 1);
		compareOutlet(&d, t, i * m->dt, m->c.drawKgPerS, MAINS_C, m->drawnJ, layers(&m->body)[m->body.n - 1]);
	}
	compareEnergy(&d, t, m->drawnJ, m->chargedJ, heldJ(&m->body) + (m->c.compact ? heldJ(&m->coil) : 0));
	return d;
}

/* Least time of a case over some seconds or three marches, ns. */
static double timeOf(const Case *c, int n, double dt, Faces faces, double seconds)
{
	static March m;
	double least = INFINITY, began = wallS();
	for (int i = 0; i < 3 || wallS() - began < seconds; i++) {
		begin(&m, c, n, dt, faces);
		double t = wallS();
		march(&m, stepsOf(c, dt));
		least = fmin(least, wallS() - t);
	}
	return least * 1e9;
}

typedef struct {
	double dt, ns;
	int n;
	Faces faces;
	Deviation off;
} Way;

/* A way with its error; not yet timed. */
static Way tried(const Case *c, const Table *t, int n, double dt, Faces faces)
{
	static March m;
	begin(&m, c, n, dt, faces);
	return (Way){dt, INFINITY, n, faces, deviationOf(&m, t)};
}

static void timeWell(const Case *c, Way *w) { w->ns = timeOf(c, w->n, w->dt, w->faces, 0.2); }

static void print(const char *label, const Case *c, const Way *w)
{
	printf("%s %s %g %d %.0f %.4f %.6f %s\n", label, c->name, w->dt, w->n, w->ns, w->off.outletK, w->off.energy,
	       w->faces == SMOOTH ? "usual faces" : "our faces");
}

/* The fastest way within the limits; its time is infinite if there is none. */
static Way fairest(const Case *c, const Table *t, int n, double outletK, double energy)
{
	/* Steps that go into every case a whole number of times. */
	static const double ladder[] = {300, 150, 100, 75, 60, 50, 30, 25, 20, 15, 12, 10, 7.5, 6, 5, 4, 3, 2.5, 2, 1.5, 1};
	Way best = {.ns = INFINITY};
	for (size_t i = 0; i < sizeof ladder / sizeof *ladder; i++)
		for (Faces faces = SMOOTH; faces <= SHARP; faces++) {
			Way w = tried(c, t, n, ladder[i], faces);
			if (w.off.outletK > outletK || w.off.energy > energy)
				continue;
			w.ns = timeOf(c, n, w.dt, faces, 0.02);
			if (w.ns < best.ns)
				best = w;
		}
	if (isfinite(best.ns))
		timeWell(c, &best);
	return best;
}

int main(int argc, char **argv)
{
	if (argc != 7) {
		fprintf(stderr, "usage: cases FOLDER NAME LAYERS FINE_LAYERS OUTLET_K ENERGY\n");
		return 2;
	}
	static Table t;
	for (size_t k = 0; k < sizeof cases / sizeof *cases; k++) {
		const Case *c = &cases[k];
		if (strcmp(c->name, argv[2]) != 0)
			continue;
		readTable(&t, argv[1], c->name);
		Way fair = fairest(c, &t, atoi(argv[3]), atof(argv[5]), atof(argv[6]));
		if (isfinite(fair.ns))
			print("fair", c, &fair);
		Way fine = tried(c, &t, atoi(argv[4]), 1, SMOOTH);
		timeWell(c, &fine);
		print("fine", c, &fine);
	}
	return 0;
}
