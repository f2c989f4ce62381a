package slopewright.witness;

import java.util.List;
import java.util.Map;

/** Worked examples of the United States pack (section 11) and signals of section 2. */
final class CheckAmerican {
    private static final Edition ED = Edition.FAA_2010;
    private static final double FT = Angles.FOOT_M;
    private static final double MILE = Angles.NAUTICAL_MILE_M;

    private CheckAmerican() {
    }

    static void run(Ledger ledger) {
        first(ledger);
        second(ledger);
        fifth(ledger);
        others(ledger);
        threeBars(ledger);
        heliport(ledger);
        surfaces(ledger);
    }

    private static void first(Ledger ledger) {
        ledger.heading("WE-1 row of four, no glide path, height group 3");
        Plan plan = Plan.of(ED, Family.FOUR_UNIT_ROW, 3, 150 * FT);
        Ground flat = Ground.lensAt(0);
        double path = Siting.slopeDistanceM(flat, 3, 50 * FT);
        ledger.number("D, path-angle basis, ft", path / FT, 954.06, 0.05);
        Sited sited = Siting.solve(plan, flat, new Demand.HeightGroup(3));
        ledger.number("D, lowest on-course basis, ft", sited.distanceM() / FT, 1010.28, 0.05);
        double[] settings = {3.5, 3.1667, 2.8333, 2.5};
        double[] offsets = {125, 155, 185, 215};
        for (int i = 0; i < 4; i++) {
            LightUnit unit = sited.layout().units().get(i);
            ledger.number("setting " + unit.id(), unit.settingDeg(), settings[i], 5e-5);
            ledger.number("offset " + unit.id() + " ft", -unit.rightM() / FT, offsets[i], 1e-9);
        }
        Layout layout = Builder.at(plan, flat, 954.06 * FT);
        bands(ledger, layout, 0, 41.66, 47.22, 52.78, 58.35);
        bands(ledger, layout, -MILE, 306.94, 347.93, 388.95, 429.98);
        bands(ledger, layout, -3.4 * MILE, 943.64, 1069.65, 1195.73, 1321.90);
        ledger.number("3 degree line over the threshold, ft", EyeHeights.nominalM(layout, 0) / FT, 50, 0.05);
        ledger.number("3 degree line at 1 NM, ft", EyeHeights.nominalM(layout, -MILE) / FT, 368.44, 0.05);
        ledger.number("3 degree line at 3.4 NM, ft", EyeHeights.nominalM(layout, -3.4 * MILE) / FT, 1132.68, 0.05);
        ledger.number("actual lowest on-course height, ft", EyeHeights.mehtM(layout) / FT, 47.22, 0.05);
        double[] at = {2.4, 2.6, 2.9, 3.0, 3.2, 3.4, 3.6};
        String[] seen = {"RRRR", "RRRW", "RRWW", "RRWW", "RWWW", "RWWW", "WWWW"};
        for (int i = 0; i < at.length; i++) {
            Eye eye = new Eye(-4000, 0, (4000 + 954.06 * FT) * Angles.tanDeg(at[i]));
            ledger.word("signal at " + at[i], Signals.view(layout, eye).pattern(), seen[i]);
        }
    }

    private static void bands(Ledger ledger, Layout layout, double alongM, double... feet) {
        List<Band> list = EyeHeights.bands(layout, alongM, 0.5, 6);
        for (int i = 0; i < feet.length; i++) {
            ledger.number("edge over " + Math.round(alongM) + " m after " + list.get(i).pattern() + ", ft", list.get(i).toM() / FT, feet[i],
                0.05);
        }
    }

    private static void second(Ledger ledger) {
        ledger.heading("WE-2 slope correction, path-angle basis, 45 ft");
        double[][] lines = {{0, 858.65, 0}, {1, 721.06, 7.21}, {-1, 1061.13, -10.61}};
        for (double[] line : lines) {
            double d = Siting.slopeDistanceM(Ground.sloping(line[0], 0), 3, 45 * FT) / FT;
            ledger.number("d at " + line[0] + " %", d, line[1], 0.05);
            ledger.number("e", d * line[0] / 100, line[2], 0.05);
        }
        double step = 858.65;
        double[] printed = {694.81, 726.07, 720.11, 721.25, 721.03, 721.07};
        for (double value : printed) {
            step = (45 - 0.01 * step) / Angles.tanDeg(3);
            ledger.number("iteration", step, value, 0.05);
        }
    }

    private static void fifth(Ledger ledger) {
        ledger.heading("WE-5 two-bar corridor, settings 2.5 and 3.0");
        Plan plan = Plan.of(ED, Family.TWO_BAR, 3, 150 * FT).with(Variant.LOW_CUSTOM);
        double[] out = {0, 1000 * FT, 0.5 * MILE, MILE, 2 * MILE, 4 * MILE};
        double[] low = {26.20, 69.86, 158.84, 291.49, 556.77, 1087.35};
        double[] wideTop = {68.13, 120.54, 227.35, 386.57, 705.00, 1341.87};
        double[] closeTop = {32.65, 85.06, 191.87, 351.09, 669.52, 1306.39};
        double[] wide = {41.93, 50.68, 68.51, 95.08, 148.23, 254.52};
        double[] close = {6.45, 15.20, 33.03, 59.60, 112.75, 219.04};
        Layout far = Builder.at(plan.withBars(4, 700 * FT), Ground.lensAt(0), 600 * FT);
        Layout near = Builder.at(plan.withBars(4, 23 * FT), Ground.lensAt(0), 600 * FT);
        for (int i = 0; i < out.length; i++) {
            double bottom = EyeHeights.leastOnSlopeM(far, -out[i], 0, false) / FT;
            double top = EyeHeights.greatestOnSlopeM(far, -out[i], false) / FT;
            double other = EyeHeights.greatestOnSlopeM(near, -out[i], false) / FT;
            ledger.number("A low, ft", bottom, low[i], 0.05);
            ledger.number("A high, ft", top, wideTop[i], 0.05);
            ledger.number("A width, ft", top - bottom, wide[i], 0.05);
            ledger.number("B high, ft", other, closeTop[i], 0.05);
            ledger.number("B width, ft", other - EyeHeights.leastOnSlopeM(near, -out[i], 0, false) / FT, close[i], 0.05);
        }
        ledger.number("crossing height, ft", EyeHeights.mehtM(far) / FT, 26.20, 0.05);
        ledger.holds("A inside 25 to 75 ft", EyeHeights.mehtM(far) / FT > 25 && EyeHeights.mehtM(far) / FT < 75);
        ledger.holds("B spacing under the printed least of 500 ft", 23 < Transcription.number(ED, Family.TWO_BAR, "bar-spacing-min-ft"));
    }

    private static void others(Ledger ledger) {
        ledger.heading("WE-8 helicopter set-up");
        ledger.number("80 kt, 400 ft/min", Descent.slopeDeg(80, 400), 2.83, 0.005);
        ledger.number("80 kt, 1000 ft/min", Descent.slopeDeg(80, 1000), 7.04, 0.005);
        ledger.heading("WE-9 gear geometry");
        double[][] rows = {{20, 372.1, 391.2, 373}, {22, 410.2, 429.3, 416}, {19, 353.0, 372.1, 363}, {36, 677.4, 696.5, 683},
            {35, 658.3, 677.4, 675}, {34, 639.2, 658.3, 644}};
        for (double[] row : rows) {
            ledger.number("gear " + row[0] + " low", (row[0] - 0.5) / Angles.tanDeg(3), row[1], 0.05);
            ledger.number("gear " + row[0] + " high", (row[0] + 0.5) / Angles.tanDeg(3), row[2], 0.05);
            ledger.holds("published " + row[3] + " lies inside", row[3] >= row[1] && row[3] <= row[2]);
        }
        double[][] nine = {{20, 373}, {22, 416}, {19, 363}, {19, 363}, {36, 683}, {35, 675}, {35, 671}, {34, 649}, {34, 644}};
        double[] difference = {32.4, 30.4, 33.4, 33.4, 16.4, 17.4, 17.4, 18.4, 18.4};
        for (int i = 0; i < nine.length; i++) {
            ledger.holds("9.2 row " + (i + 1) + " inside its band",
                nine[i][1] >= (nine[i][0] - 0.5) / Angles.tanDeg(3) && nine[i][1] <= (nine[i][0] + 0.5) / Angles.tanDeg(3));
            ledger.number("9.2 eye path less gear path, ft", 1000 * Angles.tanDeg(3) - nine[i][0], difference[i], 0.05);
        }
        ledger.number("9.2 3 degrees at 1000 ft", 1000 * Angles.tanDeg(3), 52.41, 0.005);
        ledger.heading("WE-12 alignment panels");
        ledger.number("rise, ft", new Panels(3, 0, 0, 50).riseM(), 2.620, 0.0005);
        ledger.number("rise, in", 12 * new Panels(3, 0, 0, 50).riseM(), 31.4, 0.05);
        ledger.number("20 to 1 rise, in", 50 * 12 / 20.0, 30.0, 0.05);
        ledger.number("20 to 1 angle", Angles.atanDeg(0.05), 2.862, 0.0005);
        ledger.number("low by", 3 - Angles.atanDeg(0.05), 0.138, 0.0005);
        double[][] split = {{3960, 0.19, 0.38, 0.76}, {2640, 0.28, 0.57, 1.14}, {1320, 0.57, 1.14, 2.27}};
        double[] error = {0.25, 0.5, 1};
        Panels panels = new Panels(3, 0, 0, 50);
        for (double[] row : split) {
            for (int i = 0; i < error.length; i++) {
                Eye eye = new Eye(-(row[0] + 50), 0, (row[0] + 50) * Angles.tanDeg(3 + error[i]));
                ledger.number("split at " + row[0] + " ft, +" + error[i], panels.splitMin(eye), row[i + 1], 0.005);
            }
        }
        double[][] rises = {{2.5, 0.873, 22.9}, {3, 1.048, 19.08}, {3.5, 1.223, 16.35}, {4, 1.399, 14.30}};
        for (double[] row : rises) {
            ledger.number("rise a 20 in at " + row[0], 20 * Angles.tanDeg(row[0]), row[1], 0.0005);
            ledger.number("ratio", 1 / Angles.tanDeg(row[0]), row[2], row[0] < 3 ? 0.05 : 0.005);
        }
    }

    private static void threeBars(Ledger ledger) {
        ledger.heading("2.1, 2.2 bars: patterns from below upward");
        Layout two = Builder.at(Plan.of(ED, Family.TWO_BAR, 3, 45).withBars(2, Double.NaN), Ground.lensAt(0), 183);
        Layout three = Builder.at(Plan.of(ED, Family.THREE_BAR, 3, 45), Ground.lensAt(0), 183);
        ledger.word("two", patterns(two), "RR WR WW");
        ledger.word("three", patterns(three), "RRRRRR WWRRRR WWWWRR WWWWWW");
        ledger.number("upper path least height, ft (D mid tan a mid)", EyeHeights.upperMehtM(three) / FT,
            (183 / FT + 700) * Angles.tanDeg(3), 0.05);
        ledger.number("two-bar 12 units", Builder.at(Plan.of(ED, Family.TWO_BAR, 3, 45).withBars(12, 213), Ground.lensAt(0), 183).units()
            .size(), 12, 0);
        ledger.number("three-bar 16 units", Builder.at(Plan.of(ED, Family.THREE_BAR, 3, 45).withBars(16, 213), Ground.lensAt(0), 183)
            .units().size(), 16, 0);
        ledger.word("tri-colour", patterns(Builder.at(Plan.of(ED, Family.TRI_COLOUR, 3, 45).with(new Edges(0, 2.5, 3.5)),
            Ground.lensAt(0), 300)), "R G A");
        ledger.word("pulsating", patterns(Builder.at(Plan.of(ED, Family.PULSATING, 3, 45).with(new Edges(2, 2.8, 3.2)),
            Ground.lensAt(0), 300)), "r R W w");
        ledger.word("heliport sector", patterns(Builder.at(Plan.of(ED, Family.HELIPORT_SECTOR, 3, 0), Ground.lensAt(0), 300)), "r R G g");
    }

    private static String patterns(Layout layout) {
        StringBuilder text = new StringBuilder();
        for (Band band : EyeHeights.bands(layout, -3000, 0.5, 9)) {
            text.append(text.isEmpty() ? "" : " ").append(band.pattern());
        }
        return text.toString();
    }

    private static void heliport(Ledger ledger) {
        ledger.heading("2.9 heliport pair at 6 degrees; 7.20 distances");
        Layout pair = Builder.at(Plan.of(ED, Family.HELIPORT_PAIR, 6, 0), Ground.lensAt(0), 40);
        double[] low = {4.25, 6.25};
        double[] high = {5.75, 7.75};
        for (int i = 0; i < 2; i++) {
            ledger.number("low-set edge", pair.unit("low").sectors().get(i).toDeg(), low[i], 1e-9);
            ledger.number("high-set edge", pair.unit("high").sectors().get(i).toDeg(), high[i], 1e-9);
        }
        Map<Double, Meaning> meanings = Map.of(8.0, Meaning.WELL_ABOVE, 7.0, Meaning.ABOVE, 6.0, Meaning.ON_SLOPE, 5.0, Meaning.BELOW, 4.0,
            Meaning.WELL_BELOW);
        for (double deg : new double[] {8, 7, 6, 5, 4}) {
            Eye eye = new Eye(-500, 0, 540 * Angles.tanDeg(deg));
            ledger.word("pair at " + deg, Signals.view(pair, eye).meaning(), meanings.get(deg));
        }
        double[][] rows = {{6, 28.5, 76.1, 85.6, 133.2}, {8, 21.3, 56.9, 64.0, 99.6}, {10, 17.0, 45.4, 51.0, 79.4},
            {12, 14.1, 37.6, 42.3, 65.9}};
        for (double[] row : rows) {
            Plan plan = Plan.of(ED, Family.HELIPORT_PAIR, row[0], 0);
            double[][] cases = {{3, 0}, {8, 0}, {3, 6}, {8, 6}};
            for (int i = 0; i < cases.length; i++) {
                Sited sited = Siting.solve(plan, Ground.lensAt(0), new Demand.Hover(cases[i][0] * FT, cases[i][1] * FT));
                ledger.number(row[0] + " degrees, H " + cases[i][0] + " E " + cases[i][1] + ", ft", sited.distanceM() / FT, row[i + 1],
                    0.05);
            }
        }
    }

    private static void surfaces(Ledger ledger) {
        ledger.heading("section 5 surfaces");
        Plan plan = Plan.of(ED, Family.FOUR_UNIT_ROW, 3, 45);
        Layout four = Builder.at(plan, Ground.lensAt(0), 300);
        Surface surface = Surfaces.runway(four, 4, Approach.VISUAL, Double.NaN, GroundLine.level(0));
        ledger.number("L-880 standard", surface.slopeDeg(), Angles.deg(1, 50), 1e-9);
        ledger.number("one in", 1 / Angles.tanDeg(surface.slopeDeg()), 31.24, 0.005);
        Surface wide = Surfaces.runway(Builder.at(plan.with(Variant.GLIDE_PATH), Ground.lensAt(0), 300), 4, Approach.INSTRUMENT, Double.NaN,
            GroundLine.level(0));
        ledger.number("L-880 group 4", wide.slopeDeg(), 1.75, 1e-9);
        ledger.number("one in", 1 / Angles.tanDeg(wide.slopeDeg()), 32.73, 0.005);
        Surface two = Surfaces.runway(Builder.at(Plan.of(ED, Family.TWO_UNIT_ROW, 3, 45), Ground.lensAt(0), 300), 4, Approach.VISUAL,
            Double.NaN, GroundLine.level(0));
        ledger.number("L-881", two.slopeDeg(), 1.75, 1e-9);
        ledger.number("start, ft from the row", (300 - surface.startAlongM()) / FT, 300, 1e-9);
        ledger.number("length, ft", surface.lengthM() / FT, 21120, 1e-6);
        ledger.number("half width at 1000 ft, ft", surface.halfWidthM(1000 * FT) / FT, 1000 * Angles.tanDeg(10), 1e-9);
        ledger.number("3.4 NM in statute miles", 3.4 * MILE / Angles.STATUTE_MILE_M, 3.91, 0.005);
        ledger.number("4 SM in nautical miles", 4 * Angles.STATUTE_MILE_M / MILE, 3.476, 0.0005);
    }
}
