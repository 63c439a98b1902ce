package casefile

import (
	"bytes"
	"fmt"

	"dhwcompare/climate"
	"dhwcompare/compare"
	"dhwcompare/tariffs"
)

func useWeather(p *compare.Climate, name string, data []byte) ([]string, error) {
	o, err := climate.ReadEPW(bytes.NewReader(data), name)
	if err != nil {
		return nil, err
	}
	p.Outdoor, p.OutdoorC = o, o.MeansC()
	if rh, has := o.MeanRHPercent(); has {
		p.RHPercent = rh
	}
	return o.Warnings, nil
}

func seriesOptions(c *compare.Case, name string) tariffs.SeriesOptions {
	return tariffs.SeriesOptions{File: name, Year: c.Climate.Year(), UTCOffsetMinutes: c.Climate.UTCOffsetMin}
}

func usePrices(c *compare.Case, t *tariffs.Tariff, name string, data []byte) ([]string, error) {
	s, err := tariffs.ReadPrices(bytes.NewReader(data), seriesOptions(c, name))
	if err != nil {
		return nil, err
	}
	t.SeriesPerKWh = s.HalfHours
	return s.Warnings, nil
}

// useSchedule takes the rates of a schedule. Everything else about the tariff is
// stated in the case.
func useSchedule(t *tariffs.Tariff, name string, data []byte) ([]string, error) {
	read, warnings, err := tariffs.ReadMatrix(bytes.NewReader(data), name)
	if err != nil {
		return nil, err
	}
	t.Bands, t.Remaining = read.Bands, nil
	if fixed := read.StandingPerDay; fixed != 0 && rounded(fixed) != rounded(t.StandingPerDay) {
		warnings = append(warnings, fmt.Sprintf("its fixed charge of %s a day is left out: standing_per_day of the case counts, %s a day", rounded(fixed), plain(t.StandingPerDay)))
	}
	return warnings, nil
}

func useSurplus(c *compare.Case, name string, data []byte) ([]string, error) {
	s, err := tariffs.ReadSurplus(bytes.NewReader(data), seriesOptions(c, name))
	if err != nil {
		return nil, err
	}
	c.Surplus.HalfHourKWh = s.HalfHours
	return s.Warnings, nil
}
