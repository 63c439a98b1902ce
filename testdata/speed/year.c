/* A year of the compact store of compare/plant's test home, marched in one fixed step
 * with the vessel of vessel.h: time, electricity and failing showers.
 *
 *   year INPUTS ENERGY SHOWERS
 *
 * INPUTS is what "go test -run YearInputs ./compare/plant -year-inputs FILE" writes. It
 * prints a line for each of three programs: "fine" (1 s and four times the layers); "fair"
 * (the layers of the Go program, and the longest step and the faces that keep electricity
 * within the share ENERGY of the fine year and failing showers within SHOWERS: good luck
 * more than convergence, as finer steps at these layers are further off; no line if none
 * does); "good" (one to three times the layers, and the heat delivered within 0.3 % too, as
 * the Go year has it): label, step in s, layers, ns, kWh, failing showers, kWh delivered,
 * starts, showers, how faces are found.
 *
 * Equal to the Go program: weather, draw-offs, mixing at the outlets with its margins,
 * dead legs, throttling, the vessel's equations, heat transfer of the coil, generic map,
 * lags of a start, loop, sensor and its lag, hysteresis, pauses, least run. Left out here,
 * as in the Go year it is timed against: house, frost, immersion heater, hot spells,
 * schedules. Left out here alone: losses booked by place, half hours, a ledger by month,
 * judgement of baths and taps, balance of heat. So the C does less.
 */
#define _POSIX_C_SOURCE 199309L
#include "rows.h"
#include "vessel.h"
#include "year_inputs.h"

#define YEAR_S (HOURS * 3600.0)
#define KG_PER_L_COLD 0.9997 /* mains water at 10 C (IAPWS-95), as compare/vessel */
#define MOST_ACTIVE 16

/* The water in the pipe to an outlet, looked at only when somebody draws. */
typedef struct {
	double kg, c, atS;
	int inUse;
} Leg;

typedef struct {
	const Draw *d;
	double flushKg, warmKg, legC, refillKg, refillC;
	double left;			    /* seconds or litres */
	double mixedKgPerS, hotKgPerS, share;
	double flowS;			    /* of the step: less than all in the last one of a flush or of a draw */
	double coldS;
} Active;

typedef struct {
	double outputW, leavingC, electricW, overshootK;
} Point;

typedef struct {
	double kWh, deliveredKWh;
	int starts, showers, failing;
} Totals;

typedef struct {
	double dt, t, outdoor, mains;
	Body body, coil;
	Pair still;
	double zone; /* stirred layers */
	Leg legs[OUTLETS];
	Active active[MOST_ACTIVE];
	int actives, next;
	int on;
	double changeS;			    /* when the heat pump last started or stopped */
	double sensorC, sensorShare;	    /* share of its way that the sensor makes in a step */
	double loopC, loopJPerK, kgPerS, wPerK;
	double heatLeft, heatKept, heatMean; /* lag of the heat: what is still missing, kept in a step, mean */
	double electricLeft, electricKept, electricMean;
	double electricJ, deliveredJ;
	Totals totals;
} March;

static double meanOver(double x) { return (1 - exp(-x)) / x; }

static void begin(March *m, int n, double dt, Faces faces)
{
	memset(m, 0, sizeof *m);
	m->dt = dt;
	makeBody(&m->body, n, faces, f.volume - f.coilDisplaced, f.height, f.conductivity, f.loss, dt);
	makeBody(&m->coil, n, faces, f.coilWater, f.height, 0, 0, dt);
	fill(&m->body, f.setpointC);
	fill(&m->coil, f.setpointC);
	m->still = pairOf(&m->body, &m->coil, f.uaStill, dt);
	m->zone = f.mixing * n;
	m->sensorC = f.setpointC;
	m->sensorShare = 1 - exp(-dt / f.sensorLagS);
	m->changeS = -f.antiCycleS;
	m->loopC = f.roomC;
	m->loopJPerK = f.loopL * KG_PER_L * CP + f.loopMetal;
	m->kgPerS = f.loopFlow / 60 * KG_PER_L;
	m->wPerK = m->kgPerS * CP;
	m->heatKept = exp(-dt / f.heatTauS), m->heatMean = meanOver(dt / f.heatTauS);
	m->electricKept = exp(-dt / f.electricityTauS), m->electricMean = meanOver(dt / f.electricityTauS);
	for (int i = 0; i < OUTLETS; i++)
		m->legs[i] = (Leg){.kg = f.legL[i] * KG_PER_L, .c = f.roomC};
}

/* UA of the coil while mains water flows: the law of compare/coil, held to 2..20 l/min. */
static double uaAt(double lPerMin, double storeC)
{
	double x = log(fmin(fmax(lPerMin, 2), 20) / 10);
	double slope = f.uaPerK + f.uaPerKPerLog * x;
	return f.ua10 * exp(x * (f.uaExponent + f.uaCurvature * x)) * fmax(1 + slope * (storeC - f.uaReferenceC), 0.1);
}

/* The generic map of compare/heatpump, small unit, at its default part-load penalty. */
static Point pointAt(double outdoor, double returnC, double wPerK)
{
	const double perK = 0.003, fullEta = 0.49, lightEta = 0.56;
	double at45W = fmin(9000, 6400 + 144 * (outdoor - 7)), leastW = fmax(1000, 2000 + 40 * (outdoor - 7));
	double limitC = fmin(f.setpointC + f.aboveK, f.highestC), capped = at45W * f.cap;
	Point p;
	p.leavingC = fmin(limitC, returnC + capped * (1 - perK * (returnC - 45)) / (wPerK + perK * capped));
	p.outputW = wPerK * (p.leavingC - returnC);
	if (p.outputW < leastW) {
		p.outputW = leastW;
		p.leavingC = returnC + leastW / wPerK;
	}
	p.overshootK = fmax(0, p.leavingC - limitC);
	double share = fmin(p.outputW / (at45W * (1 - perK * (p.leavingC - 45))), 1);
	double eta = share <= 0.5 ? lightEta : fullEta + (lightEta - fullEta) * (1 - share) / 0.5;
	double waterC = fmax(p.leavingC, outdoor + 12);
	p.electricW = p.outputW / (eta * (waterC + 2 + 273.15) / (waterC + 2 - (outdoor - 6)));
	return p;
}

static double atHeight(Body *b, double height)
{
	double x = fmin(fmax(height * b->n - 0.5, 0), b->n - 1.000001);
	int i = (int)x;
	return layers(b)[i] + (x - i) * (layers(b)[i + 1] - layers(b)[i]);
}

static void beginDraw(March *m, const Draw *d)
{
	Leg *l = &m->legs[d->outlet];
	if (m->actives == MOST_ACTIVE)
		fail("too many draw-offs at once");
	Active a = {.d = d, .left = d->seconds > 0 ? d->seconds : d->litres};
	if (l->inUse == 0) {
		l->c = f.roomC + (l->c - f.roomC) * exp(-(m->t - l->atS) / f.legCoolS);
		a.legC = l->c;
		*(l->c < d->leastC ? &a.flushKg : &a.warmKg) = l->kg;
	}
	l->inUse++;
	m->active[m->actives++] = a;
}

/* Flows of a step from the water at hand; gives the hot flow of all together, kg/s. */
static double planDraws(March *m, double outletC)
{
	double total = 0, hot = 0;
	for (int i = 0; i < m->actives; i++)
		total += m->active[i].d->lPerMin;
	double throttle = fmin(1, f.largestFlow / total);
	for (int i = 0; i < m->actives; i++) {
		Active *a = &m->active[i];
		double supplyC = a->warmKg > 0 ? a->legC : outletC;
		a->mixedKgPerS = a->d->lPerMin / 60 * a->d->kgPerL * throttle;
		a->share = 1;
		if (a->flushKg == 0) {
			double mixedC = fmin(a->d->wantC, supplyC - f.marginK[a->d->outlet]);
			a->share = mixedC > m->mains ? (mixedC - m->mains) / (supplyC - m->mains) : 0;
		}
		a->hotKgPerS = a->share * a->mixedKgPerS;
		double rate = a->d->seconds > 0 ? 1 : a->mixedKgPerS / a->d->kgPerL;
		a->flowS = fmin(m->dt, a->flushKg > 0 ? a->flushKg / a->mixedKgPerS : a->left / rate);
		hot += a->hotKgPerS * a->flowS / m->dt;
	}
	return hot;
}

static void refill(March *m, Active *a, double kg, double outC)
{
	Leg *l = &m->legs[a->d->outlet];
	if (kg > 0)
		a->refillC = (a->refillC * a->refillKg + outC * kg) / (a->refillKg + kg), a->refillKg += kg;
	double old = fmax(l->kg - a->refillKg, 0);
	l->c = (a->refillC * a->refillKg + a->legC * old) / (a->refillKg + old);
}

/* Books a step of a draw-off; gives whether it is over. */
static int flowed(March *m, Active *a, double outC)
{
	double hotKg = a->hotKgPerS * a->flowS;
	if (a->flushKg > 0) {
		refill(m, a, hotKg, outC);
		a->flushKg = a->flushKg - hotKg > 1e-9 ? a->flushKg - hotKg : 0;
		return 0;
	}
	double supplyC = outC;
	if (a->warmKg > 0) {
		supplyC = a->legC;
		refill(m, a, hotKg, outC);
		a->warmKg = fmax(a->warmKg - hotKg, 0);
	}
	double deliveredC = m->mains + a->share * (supplyC - m->mains);
	m->deliveredJ += a->mixedKgPerS * a->flowS * CP * (deliveredC - m->mains);
	if (deliveredC < a->d->leastC)
		a->coldS += a->flowS;
	a->left -= a->d->seconds > 0 ? a->flowS : a->mixedKgPerS / a->d->kgPerL * a->flowS;
	return a->left <= 1e-6;
}

static void endDraw(March *m, const Active *a)
{
	Leg *l = &m->legs[a->d->outlet];
	l->inUse--;
	l->atS = m->t;
	if (a->d->kind == 0) {
		m->totals.showers++;
		m->totals.failing += a->coldS > f.coldS;
	}
}

/* Starts or stops the heat pump. */
static void decide(March *m, const Point *p)
{
	if (!m->on) {
		if (m->sensorC <= f.setpointC - f.hysteresisK && m->t >= m->changeS + f.antiCycleS) {
			m->on = 1, m->changeS = m->t, m->totals.starts++;
			m->heatLeft = m->electricLeft = 1;
		}
		return;
	}
	int done = m->t >= m->changeS + f.minRunS && (m->sensorC >= f.setpointC || p->overshootK > f.overshootK);
	if (done || p->leavingC > f.highestC)
		m->on = 0, m->changeS = m->t;
}

/* The heat pump's step: heat into the loop, the loop's water through the store. */
static void charge(March *m, const Point *p, double lossWPerK, double aroundC)
{
	double dt = m->dt, *t = layers(&m->body);
	double heatW = p->outputW * (1 - m->heatLeft * m->heatMean);
	m->electricJ += (p->electricW * (1 - m->electricLeft * m->electricMean) + f.pumpW) * dt;
	m->heatLeft *= m->heatKept, m->electricLeft *= m->electricKept;
	double pull = (m->wPerK + lossWPerK) * dt / m->loopJPerK;
	double flowC = (m->loopC + (heatW + m->wPerK * t[0] + lossWPerK * aroundC) * dt / m->loopJPerK) / (1 + pull);
	double kg = m->kgPerS * dt;
	double returnC = move(&m->body, sink, kg / m->body.kg, flowC);
	stirHigh(&m->body, m->zone, kg / m->body.kg);
	m->loopC += (heatW - m->wPerK * (flowC - returnC) - lossWPerK * (flowC - aroundC)) * dt / m->loopJPerK;
}

static void serveDraws(March *m)
{
	double outletC = layers(&m->coil)[m->coil.n - 1];
	double hot = planDraws(m, outletC), outC = outletC;
	if (hot > 0) {
		outC = move(&m->coil, rise, hot * m->dt / m->coil.kg, m->mains);
		double meanC = sumC(&m->body) / m->body.n;
		exchange(&m->body, &m->coil, pairOf(&m->body, &m->coil, uaAt(hot * 60 / KG_PER_L_COLD, meanC), m->dt));
	} else {
		exchange(&m->body, &m->coil, m->still);
	}
	m->t += m->dt;
	int kept = 0;
	for (int i = 0; i < m->actives; i++) {
		if (flowed(m, &m->active[i], outC))
			endDraw(m, &m->active[i]);
		else
			m->active[kept++] = m->active[i];
	}
	m->actives = kept;
}

static void step(March *m)
{
	double lossWPerK = f.loopIndoor + f.loopOutdoor;
	double aroundC = (f.loopIndoor * f.roomC + f.loopOutdoor * m->outdoor) / lossWPerK;
	while (m->next < drawCount && draws[m->next].startS <= m->t)
		beginDraw(m, &draws[m->next++]);
	Point p = {0};
	if (m->on)
		p = pointAt(m->outdoor, layers(&m->body)[0], m->wPerK);
	decide(m, &p);
	if (m->on && p.outputW == 0)
		p = pointAt(m->outdoor, layers(&m->body)[0], m->wPerK);
	lose(&m->body, f.roomC);
	if (m->actives > 0) {
		serveDraws(m);
	} else {
		exchange(&m->body, &m->coil, m->still);
		m->t += m->dt;
	}
	if (m->on)
		charge(m, &p, lossWPerK, aroundC);
	else
		m->loopC -= (m->loopC - aroundC) * lossWPerK * m->dt / m->loopJPerK;
	conduct(&m->body);
	settle(&m->body);
	m->sensorC += (atHeight(&m->body, f.sensorHeight) - m->sensorC) * m->sensorShare;
}

static void live(March *m)
{
	int perHour = (int)lround(3600 / m->dt);
	for (int hour = 0; hour < HOURS; hour++) {
		m->outdoor = outdoorC[hour], m->mains = mainsC[hour];
		m->t = hour * 3600.0;
		for (int i = 0; i < perHour; i++)
			step(m);
	}
	m->totals.kWh = (m->electricJ + f.standbyW * YEAR_S) / 3.6e6;
	m->totals.deliveredKWh = m->deliveredJ / 3.6e6;
}

typedef struct {
	double dt, ns;
	int n;
	Faces faces;
	Totals totals;
} Year;

/* Lives through a year some times; the quickest counts. */
static Year yearOf(int n, double dt, Faces faces, int times)
{
	static March m;
	Year y = {.dt = dt, .n = n, .faces = faces, .ns = INFINITY};
	for (int i = 0; i < times; i++) {
		begin(&m, n, dt, faces);
		double began = cpuS();
		live(&m);
		y.ns = fmin(y.ns, (cpuS() - began) * 1e9);
	}
	y.totals = m.totals;
	return y;
}

/* How far a year may be from the fine one. */
typedef struct {
	double energy;
	int showers, heatToo;
} Bounds;

static int holds(const Year *y, const Year *fine, Bounds b)
{
	return fabs(y->totals.kWh / fine->totals.kWh - 1) <= b.energy && abs(y->totals.failing - fine->totals.failing) <= b.showers &&
	       (!b.heatToo || fabs(y->totals.deliveredKWh / fine->totals.deliveredKWh - 1) <= 0.003);
}

/* The longest step that holds, with the faces that are quicker, if that is faster than best. */
static void fairest(int n, const Year *fine, Bounds b, Year *best)
{
	/* Steps that go into an hour a whole number of times. */
	static const double ladder[] = {60, 45, 30, 24, 20, 18, 15, 12, 10, 9, 8, 7.5, 6, 5, 4, 3, 2, 1.5, 1};
	int found = 0;
	for (size_t i = 0; i < sizeof ladder / sizeof *ladder && !found; i++)
		for (Faces faces = SMOOTH; faces <= SHARP; faces++) {
			Year y = yearOf(n, ladder[i], faces, 1);
			if (y.ns > 1.5 * best->ns)
				return;
			if (!holds(&y, fine, b))
				continue;
			found = 1;
			y = yearOf(n, ladder[i], faces, 10);
			if (y.ns < best->ns)
				*best = y;
		}
}

static void print(const char *label, const Year *y)
{
	const Totals *t = &y->totals;
	printf("%s %g %d %.0f %.4f %d %.4f %d %d %s\n", label, y->dt, y->n, y->ns, t->kWh, t->failing, t->deliveredKWh, t->starts,
	       t->showers, y->faces == SMOOTH ? "usual faces" : "our faces");
}

int main(int argc, char **argv)
{
	if (argc != 4) {
		fprintf(stderr, "usage: year INPUTS ENERGY SHOWERS\n");
		return 2;
	}
	readInputs(argv[1]);
	int n = (int)f.layers;
	Bounds equal = {atof(argv[2]), atoi(argv[3]), 0}, more = {atof(argv[2]), atoi(argv[3]), 1};
	Year fine = yearOf(4 * n, 1, SMOOTH, 3), fair = {.ns = INFINITY}, good = {.ns = INFINITY};
	fairest(n, &fine, equal, &fair);
	static const int quarters[] = {8, 6, 10, 4, 12}; /* of the layers; likely ones first, to be quick */
	for (size_t i = 0; i < sizeof quarters / sizeof *quarters; i++)
		fairest(n * quarters[i] / 4, &fine, more, &good);
	if (isfinite(fair.ns))
		print("fair", &fair);
	if (isfinite(good.ns))
		print("good", &good);
	print("fine", &fine);
	return 0;
}
