package slopewright.evaluation.landing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.List;

import org.junit.jupiter.api.Test;

import slopewright.evaluation.TrialSite;
import slopewright.model.MagneticVariation;
import slopewright.model.SlopewrightFactory;
import slopewright.siting.Meaning;

/** What a pilot is told of a sector unit on 6 degrees whose path passes 3.8 m over the hover point, at 100 m. */
class PilotBriefingTest {
    private static final double TAN_6 = 0.10510424;

    private static PilotBriefing briefing() {
        TrialSite site = TrialSite.helipad("heliport-sector", 6).laidOut("icao:9th");
        MagneticVariation variation = SlopewrightFactory.eINSTANCE.createMagneticVariation();
        variation.setVariationDeg(-4.0);
        variation.setSource("chart, invented");
        site.aerodrome().setMagneticVariation(variation);
        site.mast("mast", -500, 0, 10);
        return PilotBriefing.of(site.evaluation("icao:9th"), LocalDate.of(2026, 6, 1));
    }

    /** 3.8 m + 1852 m × tan 6° = 198.45 m at one mile; 587.76, 393.11 and 101.13 m at three, two and a half. */
    @Test
    void heightsOnTheWayIn() {
        List<PilotBriefing.PathHeight> heights = briefing().heights();
        assertEquals(List.of(3.0, 2.0, 1.0, 0.5), heights.stream().map(PilotBriefing.PathHeight::distanceNm).toList());
        for (PilotBriefing.PathHeight height : heights) {
            assertEquals(3.8 + height.distanceNm() * 1852 * TAN_6, height.heightM(), 0.01);
            assertEquals(100 + height.heightM(), height.altitudeM(), 1e-9);
        }
        assertEquals(198.45, heights.get(2).heightM(), 0.01);
    }

    /** On slope 45' about 6°, slightly below 15' of red under it, flashing at least twice a second above and below (5.3.6). */
    @Test
    void signalsFromAboveToBelow() {
        List<PilotBriefing.Seen> bands = briefing().bands();
        assertEquals(List.of(Meaning.ABOVE, Meaning.ON_SLOPE, Meaning.BELOW, Meaning.WELL_BELOW),
                bands.stream().map(seen -> seen.band().seen().meaning()).toList());
        assertEquals(6.375, bands.get(0).band().fromDeg(), 1e-6);
        assertEquals(5.625, bands.get(1).band().fromDeg(), 1e-6);
        assertEquals(5.375, bands.get(2).band().fromDeg(), 1e-6);
        assertEquals(2, bands.get(0).rhythms().get(0).rateHz());
        assertEquals(0, bands.get(1).rhythms().get(0).rateHz());
        assertEquals(2, bands.get(3).rhythms().get(0).rateHz());
    }

    /** Landing due north with a variation of 4° west: 004° by compass. */
    @Test
    void directionByCompass() {
        assertEquals(4, briefing().azimuth().landingMagneticDeg(), 1e-9);
    }
}
