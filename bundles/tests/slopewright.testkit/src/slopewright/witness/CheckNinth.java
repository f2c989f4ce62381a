package slopewright.witness;

import java.util.Map;

/** Printed figures of the 9th edition pack. */
final class CheckNinth {
    private static final Edition ED = Edition.ICAO_9TH;

    private CheckNinth() {
    }

    static void run(Ledger ledger) {
        ledger.heading("icao:9th settings at 3 degrees, Fig 5-20");
        Map<String, Double> four = Settings.row(ED, Family.FOUR_UNIT_ROW, Variant.STANDARD, 3);
        ledger.number("A", four.get("A"), Angles.deg(2, 30), 1e-9);
        ledger.number("B", four.get("B"), Angles.deg(2, 50), 1e-9);
        ledger.number("C", four.get("C"), Angles.deg(3, 10), 1e-9);
        ledger.number("D", four.get("D"), Angles.deg(3, 30), 1e-9);
        ledger.number("slope is (B + C) / 2", (four.get("B") + four.get("C")) / 2, 3, 1e-9);
        Map<String, Double> beside = Settings.row(ED, Family.FOUR_UNIT_ROW, Variant.GLIDE_PATH, 3);
        ledger.number("glide path A", beside.get("A"), Angles.deg(2, 25), 1e-9);
        ledger.number("glide path D", beside.get("D"), Angles.deg(3, 35), 1e-9);
        Map<String, Double> two = Settings.row(ED, Family.TWO_UNIT_ROW, Variant.STANDARD, 3);
        ledger.number("two A", two.get("A"), Angles.deg(2, 45), 1e-9);
        ledger.number("two B", two.get("B"), Angles.deg(3, 15), 1e-9);
        ledger.heading("icao:9th always corrects the level, Fig 5-19 d");
        Plan plan = Plan.of(ED, Family.FOUR_UNIT_ROW, 3, 45);
        Sited sited = Siting.solve(plan, Ground.lensAt(0.2), new Demand.EyeHeight(15.63));
        ledger.number("D1, lens 0.2 m above", sited.distanceM(), 319.58 - 0.2 * 20.4465, 0.01);
        ledger.number("MEHT", sited.mehtM(), 15.63, 1e-6);
        ledger.heading("icao:9th surface, Table 5-3");
        Surface surface = Surfaces.runway(sited.layout(), 4, Approach.INSTRUMENT, Double.NaN, GroundLine.level(0));
        ledger.number("start, not moved", surface.startAlongM(), -60, 1e-9);
        Layout moved = Builder.at(plan, Ground.lensAt(0.2), sited.distanceM() + 100);
        Surface after = Surfaces.runway(moved, 4, Approach.INSTRUMENT, sited.distanceM(), GroundLine.level(0));
        ledger.number("start, moved upwind by 100 m", after.startAlongM(), 40, 1e-9);
        Surface small = Surfaces.runway(Builder.at(Plan.of(ED, Family.TWO_UNIT_ROW, 3, 18), Ground.lensAt(0), 150), 1, Approach.VISUAL,
            Double.NaN, GroundLine.level(0));
        ledger.number("code 1 non-instrument start", small.startAlongM(), -30, 1e-9);
        ledger.number("code 1 non-instrument inner edge", small.innerEdgeM(), 60, 0);
        ledger.heading("icao:9th photometry");
        ledger.number("row red on axis", Light.rowCd(ED, Family.FOUR_UNIT_ROW, "red", 0, 0), 15000, 0);
        ledger.number("row red at 8 degrees", Light.rowCd(ED, Family.FOUR_UNIT_ROW, "red", 8, 0), 4000, 0);
        ledger.number("row red at 3.5 degrees up", Light.rowCd(ED, Family.FOUR_UNIT_ROW, "red", 0, 3.5), 4000, 0);
        ledger.number("two units at 4 degrees", Light.rowCd(ED, Family.TWO_UNIT_ROW, "red", 4, 0), 3500, 0);
        ledger.number("sector unit at 15 degrees", Light.sectorCd(ED, 15, 0), 375, 0);
        ledger.number("US white on axis", Light.rowCd(Edition.FAA_2022, Family.FOUR_UNIT_ROW, "white", 0, 0), 30000, 0);
        ledger.heading("check values of Allard's law (COLREGS) and others");
        double[] candela = {0.9, 4.3, 12, 27, 52, 94};
        for (int mile = 1; mile <= 6; mile++) {
            double tolerance = candela[mile - 1] < 10 ? 0.05 : 0.5;
            ledger.number(mile + " NM", Light.allardCd(2e-7, mile * Angles.NAUTICAL_MILE_M, 0.8), candela[mile - 1], tolerance);
        }
        ledger.number("drop of a tangent plane at 15 km", 15000.0 * 15000 / (2 * 6371000.0), 17.7, 0.05);
        ledger.heading("heliport surface, Vol II Table 5-1");
        Layout sector = Siting.solve(Plan.of(ED, Family.HELIPORT_SECTOR, 6, 0), Ground.lensAt(0), new Demand.Hover(2, 1.8)).layout();
        Surface pad = Surfaces.heliport(sector, Approach.VISUAL, 30, -10);
        ledger.number("slope, A the upper limit of below slope", pad.slopeDeg(), 6 - 37.5 / 60 - 0.65, 1e-9);
        ledger.number("start", pad.startAlongM(), -13, 1e-9);
        ledger.number("MEHT over the hover point", EyeHeights.mehtM(sector), sector.referenceAlongM() * Angles.tanDeg(5.625), 1e-6);
    }
}
