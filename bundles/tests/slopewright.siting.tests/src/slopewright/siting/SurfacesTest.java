package slopewright.siting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static slopewright.siting.Trials.FOOT;
import static slopewright.siting.Trials.hasNote;
import static slopewright.siting.Trials.helipad;
import static slopewright.siting.Trials.number;
import static slopewright.siting.Trials.rules;
import static slopewright.siting.Trials.runway;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import slopewright.geometry.ProtectionSurface;
import slopewright.messages.Message;
import slopewright.standards.Citation;
import slopewright.standards.Provenance;

/** Obstacle surfaces that belong to layouts. */
class SurfacesTest {

    /** Annex 14 Table 5-3 as read in Spain RD 862/2009: A less 0.57 or 0.9 degrees, T form 1.9; at 3 degrees A is 2.5 or 2.75. */
    @ParameterizedTest
    @CsvSource({"four-unit-row, false, 3, 1.93, 60, 150, 10, 15000", "four-unit-row, false, 2, 1.93, 60, 80, 10, 7500",
        "four-unit-row, true, 1, 1.93, 60, 150, 15, 7500", "four-unit-row, true, 4, 1.93, 60, 300, 15, 15000",
        "two-unit-row, false, 1, 1.85, 30, 60, 10, 7500", "two-unit-row, true, 2, 1.85, 60, 150, 15, 7500",
        "t-form, false, 2, 1.9, 60, 150, 10, 15000", "t-form-abbreviated, true, 3, 1.9, 60, 300, 15, 15000"})
    void fromThePrintedTable(String family, boolean instrument, double code, double slopeDeg, double startM, double innerEdgeM,
            double divergencePercent, double lengthM) {
        Siting siting = Families.site(family, runway().set(Input.CODE, code).approach(instrument ? Approach.INSTRUMENT : Approach.VISUAL)
                .build(), rules("icao:5th"));
        SurfacePlan surface = siting.surface().orElseThrow();
        assertEquals(slopeDeg, surface.slopeDeg(), 1e-9);
        assertEquals(-startM, surface.startAlongM(), 1e-9);
        assertEquals(0, surface.startHeightM(), "threshold level, to be confirmed");
        assertEquals(innerEdgeM, surface.innerEdgeM());
        assertEquals(divergencePercent, surface.divergencePercent());
        assertEquals(lengthM, surface.lengthM());
        assertTrue(surface.divergenceDeg().isEmpty());
        assertTrue(hasNote(siting, "surface.note.threshold-datum"));
        assertEquals(divergencePercent / 100, surface.geometry().divergence(), 1e-12);
    }

    @Test
    void theWidenedSettingsLowerTheSurface() {
        Siting siting = Families.site("four-unit-row", runway().settings(SitingRequest.Settings.GLIDE_PATH).build(), rules("icao:5th"));
        assertEquals(1.847, siting.surface().orElseThrow().slopeDeg(), 0.0005);
    }

    /**
     * Note c of the older table: no slope for four units on a visual runway of code 1; so the 9th edition; EASA prints one (from memory).
     */
    @Test
    void noneForFourUnitsOnAVisualRunwayOfCodeOne() {
        SitingRequest request = runway().set(Input.CODE, 1.0).build();
        for (String name : List.of("icao:5th", "icao:9th")) {
            Siting none = Families.site("four-unit-row", request, rules(name));
            assertTrue(none.surface().isEmpty(), name);
            assertEquals("surface.none-printed", none.noSurface().orElseThrow().key());
            assertEquals(1, number(none.noSurface().orElseThrow(), 2));
        }
        assertEquals(-30, Families.site("four-unit-row", request, rules("easa")).surface().orElseThrow().startAlongM(), 1e-9);
        assertTrue(Families.site("two-unit-row", runway().set(Input.CODE, 3.0).build(), rules("icao:5th")).surface().isEmpty());
    }

    @Test
    void withoutACodeNumberThereIsNoneAndANoteSaysWhy() {
        Siting siting = Families.site("four-unit-row", runway().set(Input.CODE, null).build(), rules("icao:5th"));
        assertTrue(siting.surface().isEmpty());
        assertEquals(Message.of("surface.none-without-code", Input.CODE.message()), siting.noSurface().orElseThrow());
    }

    /**
     * Table 5-3 has one half for non-instrument and one for instrument runways, Vol II Table 5-1 one row for each: neither is taken
     * unsaid.
     */
    @Test
    void withoutAnApproachTypeThereIsNoneWhereItDecides() {
        for (String name : List.of("icao:5th", "icao:9th", "easa")) {
            Siting row = Families.site("four-unit-row", runway().approach(Approach.NOT_STATED).build(), rules(name));
            assertTrue(row.surface().isEmpty(), name);
            assertEquals(Message.of("surface.none-without-approach"), row.noSurface().orElseThrow());
            assertEquals(15, row.mehtM(), 1e-9, "what does not depend on it is worked out");
        }
        Siting box = Families.site("heliport-sector", helipad().approach(Approach.NOT_STATED).build(), rules("icao:5th"));
        assertEquals(Message.of("surface.none-without-approach"), box.noSurface().orElseThrow());
        assertTrue(Families.site("four-unit-row", runway().approach(Approach.NOT_STATED).build(), rules("faa")).surface().isPresent(),
                "the US surface is the same for every approach");
        assertEquals(Approach.NOT_STATED, SitingRequest.builder().build().approach(), "never silently visual");
    }

    /** Where D1 cannot be had a surface that starts from the indicator is none; one that starts from the threshold is not touched. */
    @Test
    void withoutTheUnshiftedDistanceASurfaceFromTheIndicatorIsNone() {
        UnshiftedDistance unknown = UnshiftedDistance.unknown(Message.of("siting.missing", Input.EYE_TO_WHEEL.message()));
        for (String name : List.of("icao:9th", "easa")) {
            Siting solved = Families.site("four-unit-row", runway().build(), rules(name));
            Siting standing = Families.get("four-unit-row").assess(runway().build(), rules(name), solved.units(), unknown);
            assertTrue(standing.surface().isEmpty(), name);
            assertEquals(Message.of("surface.none-without-unshifted", unknown.reason().orElseThrow()), standing.noSurface().orElseThrow());
            assertEquals(unknown, standing.unshifted());
        }
        Siting solved = Families.site("four-unit-row", runway().build(), rules("icao:5th"));
        assertEquals(-60, Families.get("four-unit-row").assess(runway().build(), rules("icao:5th"), solved.units(), unknown).surface()
                .orElseThrow().startAlongM(), 1e-9);
        assertThrows(IllegalArgumentException.class, () -> new UnshiftedDistance(OptionalDouble.empty(), Optional.empty()));
    }

    /** EASA Table M-2: the start lies D1 + 60 m from the indicator; moved 40 m on, the surface moves with it. Older: it stays. */
    @ParameterizedTest
    @CsvSource({"icao:5th, -60", "icao:9th, -20", "easa, -20"})
    void aMovedIndicatorTakesTheLaterSurfaceAlong(String ruleSet, double startM) {
        Siting solved = Families.site("four-unit-row", runway().build(), rules(ruleSet));
        assertEquals(-60, solved.surface().orElseThrow().startAlongM(), 1e-9);
        List<UnitPlan> moved = solved.units().stream().map(unit -> unit.at(new slopewright.geometry.FramePoint(unit.place().alongM() + 40,
                unit.place().rightM(), unit.place().heightM()))).toList();
        Siting after = Families.get("four-unit-row").assess(runway().build(), rules(ruleSet), moved, solved.unshifted());
        assertEquals(startM, after.surface().orElseThrow().startAlongM(), 1e-9);
        assertEquals(solved.distanceM() + 40, after.distanceM(), 1e-9);
        assertEquals(15 + 40 * Math.tan(Math.toRadians(2.8)), after.mehtM(), 1e-9);
    }

    /** US: 300 ft before the units, 1 degree under the lowest on-course signal, 4 statute miles (from memory), 10 degrees (quoted). */
    @ParameterizedTest
    @CsvSource({"four-unit-row, 3, false, 1.8333333", "two-unit-row, 3, false, 1.75", "four-unit-row, 4, true, 1.75"})
    void usSurfaces(String family, double group, boolean glidePath, double slopeDeg) {
        SitingRequest.Builder request = runway().set(Input.EYE_HEIGHT, null).set(Input.HEIGHT_GROUP, group).set(Input.LENS_HEIGHT, 0.4);
        if (glidePath) {
            request.set(Input.GLIDE_PATH_ORIGIN, 320.0);
        }
        Siting siting = Families.site(family, request.build(), rules("faa"));
        SurfacePlan surface = siting.surface().orElseThrow();
        assertEquals(slopeDeg, surface.slopeDeg(), 1e-6);
        assertEquals(siting.distanceM() - 300 * FOOT, surface.startAlongM(), 1e-9);
        assertEquals(0.4, surface.startHeightM(), 1e-9, "level of the lenses at the reference point, to be confirmed");
        assertEquals(0, surface.innerEdgeM());
        assertEquals(10, surface.divergenceDeg().orElseThrow());
        assertEquals(4 * 5280 * FOOT, surface.lengthM(), 1e-9);
        ProtectionSurface geometry = surface.geometry();
        assertEquals(1000 * Math.tan(Math.toRadians(10)), geometry.halfWidthM(1000), 1e-9);
        assertEquals(0.4 + 1000 * Math.tan(Math.toRadians(slopeDeg)), geometry.heightAtOutwardM(1000), 1e-6);
    }

    /** Order 8200.1 7.10 as quoted: 1 degree, from the foremost bar or light, 10 degrees to each side. */
    @ParameterizedTest
    @CsvSource({"two-bar, 1.75", "three-bar, 1.75", "tri-colour, 1.5", "pulsating, 1.825"})
    void usSurfacesOfBarsAndBoxes(String family, double slopeDeg) {
        Siting siting = Families.site(family, runway().build(), rules("faa"));
        SurfacePlan surface = siting.surface().orElseThrow();
        assertEquals(slopeDeg, surface.slopeDeg(), 1e-9);
        assertEquals(siting.distanceM(), surface.startAlongM(), 1e-9);
        assertEquals(10, surface.divergenceDeg().orElseThrow());
    }

    /** Vol II Table 5-1: A less 0.57, 0.9 and 0.65 degrees; HAPI's A is the top of the lowest sector: 6 - 22.5' - 15'. */
    @ParameterizedTest
    @CsvSource({"four-unit-row, 4.7216667", "two-unit-row, 4.725", "heliport-sector, 4.725"})
    void surfacesAtHelipads(String family, double slopeDeg) {
        SurfacePlan visual = Families.site(family, helipad().build(), rules("icao:5th")).surface().orElseThrow();
        assertEquals(slopeDeg, visual.slopeDeg(), 1e-6);
        assertEquals(-12 - 3, visual.startAlongM(), 1e-9);
        assertEquals(36, visual.innerEdgeM());
        assertEquals(10, visual.divergencePercent());
        assertEquals(2500, visual.lengthM());
        SurfacePlan nonPrecision = Families.site(family, helipad().approach(Approach.INSTRUMENT).build(), rules("icao:5th")).surface()
                .orElseThrow();
        assertEquals(-12 - 60, nonPrecision.startAlongM(), 1e-9);
        assertEquals(15, nonPrecision.divergencePercent());
    }

    @Test
    void withoutTheSafetyAreaTheHelipadHasNone() {
        Siting siting = Families.site("heliport-sector", helipad().set(Input.SAFETY_AREA_WIDTH, null).build(), rules("icao:5th"));
        assertTrue(siting.surface().isEmpty());
        assertEquals(Message.of("surface.none-without-safety-area", Input.SAFETY_AREA_WIDTH.message()), siting.noSurface().orElseThrow());
    }

    /** AC 150/5390-2B 213 and 313: 1 degree, 10 degrees to each side. */
    @Test
    void usSurfaceAtAHelipad() {
        SurfacePlan surface = Families.site("heliport-pair", helipad().build(), rules("faa")).surface().orElseThrow();
        assertEquals(4.75, surface.slopeDeg(), 1e-9, "6 degrees less 15 minutes less 1 degree");
        assertEquals(10, surface.divergenceDeg().orElseThrow());
    }

    /**
     * Australia: at least 11 m above a slope of 1.9 degrees, 7.5 degrees to each side, 5 NM, 7 NM with a glide path, from the threshold
     * (visual flight rules guide).
     */
    @Test
    void australianSurfaceOfTheTForm() {
        SurfacePlan surface = Families.site("t-form", runway().build(), rules("casa")).surface().orElseThrow();
        assertEquals(1.9, surface.slopeDeg(), 1e-9);
        assertEquals(7.5, surface.divergenceDeg().orElseThrow());
        assertEquals(5 * 1852, surface.lengthM(), 1e-9);
        assertEquals(11, surface.clearanceM(), 1e-9);
        assertEquals(-11, surface.startHeightM(), 1e-9, "objects are compared with what lies 11 m under the slope from the threshold");
        assertEquals(1000 * Math.tan(Math.toRadians(1.9)) - 11, surface.geometry().heightAtOutwardM(1000), 1e-9);
        assertTrue(hasNote(Families.site("t-form", runway().build(), rules("casa")), "surface.note.clearance"));
        SitingRequest besideGlidePath = runway().set(Input.GLIDE_PATH_ORIGIN, 300.0).build();
        SurfacePlan longer = Families.site("t-form", besideGlidePath, rules("casa")).surface().orElseThrow();
        assertEquals(7 * 1852, longer.lengthM(), 1e-9);
        assertEquals(1.93, Families.site("four-unit-row", runway().build(), rules("casa")).surface().orElseThrow().slopeDeg(), 1e-9);
    }

    /** 5.3.5.21: the red limit may be raised so that what is not red clears the objects; Table 5-3 prints 1.9 degrees all the same. */
    @Test
    void aRaisedRedLimitLeavesTheSurfaceWhereItIsPrinted() {
        SitingRequest request = runway().option("red-limit-deg", "2.2").build();
        Siting siting = Families.site("t-form", request, rules("icao:5th"));
        assertEquals(1.9, siting.surface().orElseThrow().slopeDeg(), 1e-9);
        assertEquals(Provenance.PUBLISHED, siting.surface().orElseThrow().citations().get(0).provenance());
        assertEquals(Light.RED, Trials.unit(siting, "W1-left").lightAt(2.1));
        Siting again = Families.get("t-form").assess(request, rules("icao:5th"), siting.units(), siting.unshifted());
        assertEquals(1.9, again.surface().orElseThrow().slopeDeg(), 1e-9);
    }

    @Test
    void theAxisCanBeTurned() {
        Siting siting = Families.site("four-unit-row", runway().set(Input.AXIS_TURN, 3.0).build(), rules("icao:5th"));
        siting.units().forEach(unit -> assertEquals(3, unit.azimuthDeg()));
        SurfacePlan turned = siting.surface().orElseThrow();
        assertEquals(3, turned.axisTurnDeg());
        assertEquals(3, turned.geometry().axisTurnDeg());
    }

    /** A surface is known no better than the weakest number in it. */
    @Test
    void citationsCarryTheWeakestClass() {
        Citation older = Families.site("four-unit-row", runway().build(), rules("icao:5th")).surface().orElseThrow().citations().get(0);
        assertEquals(Provenance.PUBLISHED, older.provenance());
        assertTrue(older.source().title().english().startsWith("Spain RD 862/2009"));
        Citation later = Families.site("four-unit-row", runway().build(), rules("icao:9th")).surface().orElseThrow().citations().get(0);
        assertEquals(Provenance.PUBLISHED, later.provenance());
        assertTrue(later.source().title().english().startsWith("Annex 14 Vol I, 9th ed."), later.source().title().english());
        Siting easa = Families.site("four-unit-row", runway().build(), rules("easa"));
        assertEquals(Provenance.FROM_MEMORY, use(easa, "surface.slope-deg"));
        assertEquals(Provenance.PUBLISHED, use(easa, "surface.inner-edge-m"));
        assertFalse(easa.toConfirm().isEmpty());
    }

    private static Provenance use(Siting siting, String name) {
        return siting.citations().stream().filter(use -> use.name().equals(name)).findFirst().orElseThrow().citation().provenance();
    }
}
