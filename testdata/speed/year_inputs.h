/* The inputs of a year: figures of the plant, weather of each hour, draw-offs, as
 * TestYearInputsSayTheSameDraws of compare/plant writes them.
 */
#ifndef YEAR_INPUTS_H
#define YEAR_INPUTS_H

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#define HOURS 8760
#define OUTLETS 4
#define MOST_DRAWS 30000

typedef struct {
	double startS;
	int outlet, kind; /* kind 0 is a shower */
	double lPerMin, wantC, leastC, kgPerL, seconds, litres;
} Draw;

/* Figures of the plant, read by name. */
typedef struct {
	double volume, height, layers, loss, conductivity, mixing, coilWater, coilDisplaced;
	double ua10, uaExponent, uaCurvature, uaReferenceC, uaPerK, uaPerKPerLog, uaStill;
	double loopL, loopMetal, loopIndoor, loopOutdoor, loopFlow;
	double setpointC, hysteresisK, sensorHeight, sensorLagS, antiCycleS, minRunS, cap, aboveK, overshootK, highestC;
	double heatTauS, electricityTauS, largestFlow, legCoolS, coldS, pumpW, standbyW, roomC;
	double legL[OUTLETS], marginK[OUTLETS];
} Figures;

typedef struct {
	const char *name;
	double *at;
} Name;

static Figures f;
static double outdoorC[HOURS], mainsC[HOURS];
static Draw draws[MOST_DRAWS];
static int drawCount;

static const Name names[] = {
	{"volume_l", &f.volume}, {"height_m", &f.height}, {"layers", &f.layers}, {"loss_w_per_k", &f.loss},
	{"conductivity_w_per_mk", &f.conductivity}, {"inlet_mixing_share", &f.mixing}, {"coil_water_l", &f.coilWater},
	{"coil_displaced_l", &f.coilDisplaced}, {"ua10_w_per_k", &f.ua10}, {"ua_exponent", &f.uaExponent},
	{"ua_curvature", &f.uaCurvature}, {"ua_reference_c", &f.uaReferenceC}, {"ua_per_k", &f.uaPerK},
	{"ua_per_k_per_log_flow", &f.uaPerKPerLog}, {"ua_still_w_per_k", &f.uaStill}, {"loop_l", &f.loopL},
	{"loop_metal_j_per_k", &f.loopMetal}, {"loop_indoor_w_per_k", &f.loopIndoor},
	{"loop_outdoor_w_per_k", &f.loopOutdoor}, {"loop_flow_l_per_min", &f.loopFlow}, {"setpoint_c", &f.setpointC},
	{"hysteresis_k", &f.hysteresisK}, {"sensor_height", &f.sensorHeight}, {"sensor_lag_s", &f.sensorLagS},
	{"anti_cycle_s", &f.antiCycleS}, {"min_run_s", &f.minRunS}, {"output_cap", &f.cap}, {"flow_above_k", &f.aboveK},
	{"overshoot_k", &f.overshootK}, {"highest_flow_c", &f.highestC}, {"heat_tau_s", &f.heatTauS},
	{"electricity_tau_s", &f.electricityTauS}, {"largest_flow_l_per_min", &f.largestFlow}, {"leg_cool_s", &f.legCoolS},
	{"cold_s", &f.coldS}, {"pump_w", &f.pumpW}, {"standby_w", &f.standbyW}, {"room_c", &f.roomC},
	{"leg0_l", &f.legL[0]}, {"leg1_l", &f.legL[1]}, {"leg2_l", &f.legL[2]}, {"leg3_l", &f.legL[3]},
	{"margin0_k", &f.marginK[0]}, {"margin1_k", &f.marginK[1]}, {"margin2_k", &f.marginK[2]}, {"margin3_k", &f.marginK[3]},
};
#define NAMES (sizeof names / sizeof *names)

static void fail(const char *what)
{
	fprintf(stderr, "year: %s\n", what);
	exit(1);
}

static void readInputs(const char *path)
{
	FILE *file = fopen(path, "r");
	char line[512], name[64];
	double value;
	size_t known = 0;
	int hours = 0;
	if (!file)
		fail("cannot read the inputs");
	while (fgets(line, sizeof line, file)) {
		Draw *d = &draws[drawCount];
		if (sscanf(line, "k %63s %lf", name, &value) == 2) {
			for (size_t i = 0; i < NAMES; i++)
				if (strcmp(name, names[i].name) == 0)
					*names[i].at = value, known++;
		} else if (hours < HOURS && sscanf(line, "h %lf %lf", &outdoorC[hours], &mainsC[hours]) == 2) {
			hours++;
		} else if (sscanf(line, "d %lf %d %d %lf %lf %lf %lf %lf %lf", &d->startS, &d->outlet, &d->kind, &d->lPerMin, &d->wantC,
				  &d->leastC, &d->kgPerL, &d->seconds, &d->litres) == 9) {
			if (++drawCount == MOST_DRAWS)
				fail("too many draw-offs");
		}
	}
	fclose(file);
	if (known != NAMES || hours != HOURS)
		fail("the inputs are not whole");
}

#endif
