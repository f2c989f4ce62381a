package slopewright.siting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static slopewright.siting.Trials.FOOT;
import static slopewright.siting.Trials.hasNote;
import static slopewright.siting.Trials.helipad;
import static slopewright.siting.Trials.note;
import static slopewright.siting.Trials.number;
import static slopewright.siting.Trials.rules;
import static slopewright.siting.Trials.runway;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import slopewright.geometry.Profile;
import slopewright.messages.Message;
import slopewright.standards.Citation;
import slopewright.standards.Provenance;
import slopewright.standards.RuleSet;

/** What an obstacle surface is made of: every printed number named with its source, and every arm that lays it otherwise. */
class SurfaceArmsTest {
    private static final double NM = 1852;
    private static final double MILE = 5280 * FOOT;

    /** Annex 14 Vol I Table 5-3 as read in Spain RD 862/2009. */
    @ParameterizedTest
    @CsvSource({"four-unit-row, false, 3, 150, 60, 10, 15000, 0.57", "two-unit-row, true, 1, 150, 60, 15, 7500, 0.9",
        "t-form, false, 2, 150, 60, 10, 15000, 1.9", "four-unit-row, false, 2, 80, 60, 10, 7500, 0.57"})
    void everyPrintedNumberIsNamedWithItsSource(String family, boolean instrument, double code, double innerEdgeM, double startM,
            double divergencePercent, double lengthM, double slopeDeg) {
        Siting siting = Families.site(family, runway().set(Input.CODE, code).approach(instrument ? Approach.INSTRUMENT : Approach.VISUAL)
                .build(), rules("icao:5th"));
        Citation printed = siting.surface().orElseThrow().citations().get(0);
        assertEquals("Table 5-3", printed.clause().english());
        named(siting, "surface.inner-edge-m", innerEdgeM, "m", printed);
        named(siting, "surface.start-m", startM, "m", printed);
        named(siting, "surface.divergence-percent", divergencePercent, "%", printed);
        named(siting, "surface.length-m", lengthM, "m", printed);
        named(siting, "surface.slope-deg", slopeDeg, "deg", printed);
    }

    /** Annex 14 Vol II Table 5-1: A less 0.57, 0.9 or 0.65 degrees; 3 m before the FATO and 10 %, or 60 m and 15 %; 2500 m. */
    @ParameterizedTest
    @CsvSource({"four-unit-row, false, 3, 10, 0.57", "two-unit-row, false, 3, 10, 0.9", "heliport-sector, false, 3, 10, 0.65",
        "heliport-sector, true, 60, 15, 0.65"})
    void everyPrintedNumberOfAHelipadIsNamedWithItsSource(String family, boolean nonPrecision, double startM, double divergencePercent,
            double belowDeg) {
        Siting siting = Families.site(family, helipad().approach(nonPrecision ? Approach.INSTRUMENT : Approach.VISUAL).build(),
                rules("icao:5th"));
        Citation printed = siting.surface().orElseThrow().citations().get(0);
        named(siting, "surface.slope-below-a-deg", belowDeg, "deg", printed);
        named(siting, "surface.start-from-fato-m", startM, "m", printed);
        named(siting, "surface.divergence-percent", divergencePercent, "%", printed);
        named(siting, "surface.length-m", 2500, "m", printed);
    }

    private static void named(Siting siting, String name, double value, String unit, Citation printed) {
        Siting.CitedUse use = siting.citations().stream().filter(one -> one.name().equals(name)).findFirst()
                .orElseThrow(() -> new AssertionError(name));
        assertEquals(value, use.value(), 1e-12, name);
        assertEquals(unit, use.unit(), name);
        assertEquals(printed, use.citation(), name);
    }

    /** The surface begins 3 m before a FATO of which nobody said how long it is: its middle is all that is known, and that is said. */
    @Test
    void withoutTheFatoItBeginsBeforeItsMiddle() {
        Siting siting = Families.site("heliport-sector", helipad().set(Input.FATO_LENGTH, null).build(), rules("icao:5th"));
        assertEquals(-3, siting.surface().orElseThrow().startAlongM(), 1e-12);
        assertTrue(hasNote(siting, "surface.note.fato-unknown"));
        assertFalse(hasNote(Families.site("heliport-sector", helipad().build(), rules("icao:5th")), "surface.note.fato-unknown"));
    }

    @Test
    void atAPlaceThatIsDescribedTheFatoIsNeeded() {
        SitingRequest described = helipad().set(Input.FATO_LENGTH, null).option(SitingRequest.DESCRIBED_PLACE, "H1").build();
        Siting siting = Families.site("heliport-sector", described, rules("icao:5th"));
        assertTrue(siting.surface().isEmpty());
        assertEquals(Message.of("surface.none-without-fato", Input.FATO_LENGTH.message()), siting.noSurface().orElseThrow());
        assertTrue(Families.site("heliport-sector", helipad().option(SitingRequest.DESCRIBED_PLACE, "H1").build(), rules("icao:5th"))
                .surface().isPresent());
    }

    /** 24 m at most and 20 m at least: its end lies between 10 and 12 m; begins at 10 + 3, and as low as one that begins at 12 + 3. */
    @Test
    void aFatoThatMayEndNearerIsHeldBothWays() {
        Siting siting = Families.site("heliport-sector", helipad().set(Input.FATO_LEAST_LENGTH, 20.0).build(), rules("icao:5th"));
        SurfacePlan surface = siting.surface().orElseThrow();
        double rise = Math.tan(Math.toRadians(4.725));
        assertEquals(-13, surface.startAlongM(), 1e-12);
        assertEquals(-2 * rise, surface.startHeightM(), 1e-9);
        assertEquals(2502, surface.lengthM(), 1e-12, "both end at the same place");
        assertEquals(2, number(note(siting, "surface.note.fato-bearing-unknown"), 0), 1e-12);
        assertEquals((100 - 15) * rise, surface.geometry().heightAtOutwardM(100 - 13), 1e-9);
        for (double least : new double[] {24, 30}) {
            Siting known = Families.site("heliport-sector", helipad().set(Input.FATO_LEAST_LENGTH, least).build(), rules("icao:5th"));
            assertEquals(-15, known.surface().orElseThrow().startAlongM(), 1e-12);
            assertEquals(0, known.surface().orElseThrow().startHeightM(), 1e-12);
            assertFalse(hasNote(known, "surface.note.fato-bearing-unknown"));
        }
    }

    /** The level of the runway beside the row where it is known and lies below the lenses, 0.4 m; else that of the lenses. */
    @ParameterizedTest
    @CsvSource({"0.1, 2000, 0.1, surface.note.runway-datum", "0.5, 2000, 0.4, surface.note.lens-datum",
        "0.4, 2000, 0.4, surface.note.lens-datum", "0.1, 100, 0.4, surface.note.lens-datum"})
    void theUsSurfaceBeginsAtTheLowerOfRunwayAndLens(double levelM, double profileToM, double startHeightM, String said) {
        Siting siting = Families.site("four-unit-row", runway().set(Input.EYE_HEIGHT, null).set(Input.HEIGHT_GROUP, 3.0)
                .set(Input.LENS_HEIGHT, 0.4).runwayProfile(Profile.of(new double[] {0, profileToM}, new double[] {levelM, levelM}))
                .build(), rules("faa"));
        assertEquals(startHeightM, siting.surface().orElseThrow().startHeightM(), 1e-12);
        for (String note : List.of("surface.note.runway-datum", "surface.note.lens-datum")) {
            assertEquals(note.equals(said), hasNote(siting, note), note);
        }
        assertFalse(hasNote(siting, "surface.note.threshold-datum"));
        assertFalse(hasNote(siting, "surface.note.clearance"));
    }

    /** AIM 2-1-2 a: 4 nautical miles from the threshold for bars; Order 8200.1 7.10: about 4 miles from the light for boxes. */
    @Test
    void aLengthFromTheThresholdIsLongerByTheDistance() {
        for (String family : List.of("two-bar", "three-bar")) {
            Siting bars = Families.site(family, runway().build(), rules("faa"));
            assertEquals(4 * NM + bars.distanceM(), bars.surface().orElseThrow().lengthM(), 1e-9, family);
        }
        for (String family : List.of("tri-colour", "pulsating")) {
            assertEquals(4 * MILE, Families.site(family, runway().build(), rules("faa")).surface().orElseThrow().lengthM(), 1e-9, family);
        }
    }

    /** The Australian row has neither a clearance nor another length beside a glide path: 5 nautical miles, 7.5 degrees, the threshold. */
    @Test
    void theAustralianRowHasNoClearance() {
        SitingRequest besideGlidePath = runway().set(Input.GLIDE_PATH_ORIGIN, 300.0).set(Input.EYE_TO_ANTENNA_MIN, 1.0)
                .set(Input.EYE_TO_ANTENNA_MAX, 2.0).build();
        for (SitingRequest request : List.of(runway().build(), besideGlidePath)) {
            Siting siting = Families.site("four-unit-row", request, rules("casa"));
            SurfacePlan surface = siting.surface().orElseThrow();
            assertEquals(5 * NM, surface.lengthM(), 1e-9);
            assertEquals(7.5, surface.divergenceDeg().orElseThrow());
            assertEquals(0, surface.clearanceM());
            assertEquals(0, surface.startHeightM());
            assertEquals(0, surface.startAlongM(), 1e-12);
            assertFalse(hasNote(siting, "surface.note.clearance"));
            assertTrue(hasNote(siting, "surface.note.threshold-datum"));
        }
    }

    /** Indonesia MOS 139 9.9.3.1: 150 m before the threshold; the opening in a hundred is the tangent of its angle. */
    @ParameterizedTest
    @CsvSource({"casa, t-form, -150, 13.165250", "casa, four-unit-row, 0, 13.165250", "faa, heliport-pair, , 17.632698"})
    void anAngularSurfaceBeginsAndOpensAsItIsPrinted(String ruleSet, String family, Double startM, double tangentPercent) {
        SitingRequest request = "heliport-pair".equals(family) ? helipad().build() : runway().build();
        SurfacePlan surface = Families.site(family, request, rules(ruleSet)).surface().orElseThrow();
        assertEquals(tangentPercent, surface.divergencePercent(), 1e-6);
        if (startM != null) {
            assertEquals(startM, surface.startAlongM(), 1e-12);
        }
    }

    /** EASA Table M-2: the dimensions were read, lengths or slopes are from memory; the surface is known no better. */
    @Test
    void theWeakestOfItsNumbersSpeaksForTheSurface() {
        assertEquals(Provenance.FROM_MEMORY, Families.site("four-unit-row", runway().build(), rules("easa")).surface().orElseThrow()
                .citations().get(0).provenance());
    }

    /** A surface by angles cites the numbers that make it, and no others. */
    @ParameterizedTest
    @CsvSource({"faa, four-unit-row, surface-below-lowest-deg|surface-splay-deg|surface-length-m|surface-origin-before-m",
        "casa, four-unit-row, surface-below-setting-deg|surface-splay-deg|surface-length-m|surface-origin-before-m",
        "casa, t-form, surface-slope-deg|surface-splay-deg|surface-length-m|surface-origin-before-m|surface-clearance-m"})
    void whatMakesItIsCited(String ruleSet, String family, String names) {
        RuleSet rules = rules(ruleSet);
        List<Citation> cited = Families.site(family, runway().build(), rules).surface().orElseThrow().citations();
        List<Citation> made = List.of(names.split("\\|")).stream()
                .map(name -> rules.find(family + "." + name).orElseThrow().citation()).toList();
        assertTrue(cited.containsAll(made), cited + " lacks one of " + made);
        cited.stream().filter(one -> !made.contains(one)).forEach(one -> assertEquals(
                rules.choice("obstacle.surface-datum").orElseThrow().citation(), one));
    }

    /** AC 150/5390-2B 213 and 313: 1 degree below the lowest on-slope signal of a box, which at 6 degrees is 5.5. */
    @Test
    void aBoxAtAUsHelipadHasItsOwnSurface() {
        SurfacePlan surface = Families.site("tri-colour", helipad().build(), rules("faa")).surface().orElseThrow();
        assertEquals(4.5, surface.slopeDeg(), 1e-9);
        assertEquals(10, surface.divergenceDeg().orElseThrow());
        assertEquals(4 * MILE, surface.lengthM(), 1e-9);
    }
}
