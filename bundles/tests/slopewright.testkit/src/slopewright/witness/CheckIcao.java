package slopewright.witness;

import java.util.List;
import java.util.Map;

/** Printed figures of the ICAO pack (sections 2 to 9). */
final class CheckIcao {
    private static final Edition ED = Edition.ICAO_5TH;
    private static final Family FOUR = Family.FOUR_UNIT_ROW;
    private static final Family TWO = Family.TWO_UNIT_ROW;

    private CheckIcao() {
    }

    static void run(Ledger ledger) {
        settings(ledger);
        distances(ledger);
        tForm(ledger);
        lateral(ledger);
        signals(ledger);
        surfaces(ledger);
        others(ledger);
    }

    private static void settings(Ledger ledger) {
        ledger.heading("icao 3.1 settings at 3 degrees");
        row(ledger, FOUR, Variant.STANDARD, 2, 30, 2, 50, 3, 10, 3, 30);
        row(ledger, FOUR, Variant.GLIDE_PATH, 2, 25, 2, 45, 3, 15, 3, 35);
        row(ledger, TWO, Variant.STANDARD, 2, 45, 3, 15);
        Map<String, Double> heliport = Settings.row(ED, FOUR, Variant.HELIPORT, 6);
        ledger.number("on-slope sector at a heliport, minutes", 60 * (heliport.get("C") - heliport.get("B")), 45, 1e-9);
        ledger.number("on-slope sector, standard, minutes", width(FOUR, Variant.STANDARD, 3, "B", "C"), 20, 1e-9);
        ledger.number("on-slope sector, beside a glide path, minutes", width(FOUR, Variant.GLIDE_PATH, 3, "B", "C"), 30, 1e-9);
        ledger.number("on-slope sector, two units, minutes", width(TWO, Variant.STANDARD, 3, "A", "B"), 30, 1e-9);
        ledger.heading("icao 3.2 steep slopes");
        for (String[] pair : new String[][] {{"A", "B"}, {"B", "C"}, {"C", "D"}}) {
            ledger.number("5 degrees, " + pair[0] + pair[1] + " minutes", width(FOUR, Variant.STANDARD, 5, pair[0], pair[1]), 30, 1e-9);
            ledger.number("8 degrees, " + pair[0] + pair[1] + " minutes", width(FOUR, Variant.STANDARD, 8, pair[0], pair[1]), 60, 1e-9);
        }
        ledger.number("two units 5 degrees, minutes", width(TWO, Variant.STANDARD, 5, "A", "B"), 45, 1e-9);
        ledger.number("two units 8 degrees, minutes", width(TWO, Variant.STANDARD, 8, "A", "B"), 60, 1e-9);
        ledger.heading("icao 4.3 lowest angles and cotangents");
        ledger.number("M four standard", lowest(FOUR, Variant.STANDARD), Angles.deg(2, 48), 1e-9);
        ledger.number("M four beside a glide path", lowest(FOUR, Variant.GLIDE_PATH), Angles.deg(2, 43), 1e-9);
        ledger.number("M two", lowest(TWO, Variant.STANDARD), Angles.deg(2, 43), 1e-9);
        ledger.number("cot 2 48", 1 / Angles.tanDeg(lowest(FOUR, Variant.STANDARD)), 20.4465, 5e-5);
        ledger.number("cot 2 43", 1 / Angles.tanDeg(lowest(TWO, Variant.STANDARD)), 21.0747, 5e-5);
        ledger.number("cot 3", 1 / Angles.tanDeg(3), 19.0811, 5e-5);
        ledger.number("tan 2 48", Angles.tanDeg(Angles.deg(2, 48)), 0.0489082, 5e-8);
        ledger.number("mean eye-to-antenna of 90 m at 3 degrees", 90 * Angles.tanDeg(3), 4.7, 0.05);
    }

    private static double lowest(Family family, Variant variant) {
        return Settings.lowestOnSlopeDeg(Builder.at(Plan.of(ED, family, 3, 45).with(variant), Ground.lensAt(0), 300));
    }

    private static double width(Family family, Variant variant, double slopeDeg, String low, String high) {
        Map<String, Double> map = Settings.row(ED, family, variant, slopeDeg);
        return 60 * (map.get(high) - map.get(low));
    }

    private static void row(Ledger ledger, Family family, Variant variant, double... degMin) {
        int i = 0;
        for (Map.Entry<String, Double> unit : Settings.row(ED, family, variant, 3).entrySet()) {
            ledger.number(family.key() + " " + variant.key() + " " + unit.getKey(), unit.getValue(),
                Angles.deg(degMin[i], degMin[i + 1]), 1e-9);
            i += 2;
        }
    }

    private static void distances(Ledger ledger) {
        ledger.heading("icao 9.1 distance, row of four, 3 degrees");
        Plan plan = Plan.of(ED, FOUR, 3, 45);
        double[][] lines = {{6.63, 9, 15.63, 319.58}, {6.63, 5, 11.63, 237.79}, {7.99, 9, 16.99, 347.39}};
        for (double[] line : lines) {
            Sited sited = Siting.solve(plan, Ground.lensAt(0), new Demand.Aeroplane(line[0], line[1]));
            ledger.number("D1 for " + line[0] + " + " + line[1], sited.distanceM(), line[3], 0.01);
            ledger.number("MEHT", sited.mehtM(), line[2], 0.01);
            ledger.number("wheel clearance", sited.wheelClearanceM(line[0]), line[1], 1e-6);
        }
        Layout layout = Builder.at(plan, Ground.lensAt(0), 300);
        double without = Angles.firstTrue(1, 1000, 5,
            x -> EyeHeights.leastOnSlopeM(Builder.at(plan, Ground.lensAt(0), x), 0, 0, false) >= 15.63);
        ledger.number("D1 without the 2' allowance", without, 315.81, 0.01);
        ledger.number("desired clearance for 6.63 m", Wheels.desiredM(ED, 6.63), 9, 0);
        ledger.number("minimum clearance for 6.63 m", Wheels.minimumM(ED, 6.63, false), 5, 0);
        ledger.number("MEHT of a given row at 300 m", EyeHeights.mehtM(layout), 300 / 20.4465, 1e-3);
        double origin = Siting.originM(GroundLine.level(0), new Demand.GlidePath(Double.NaN, 15, 3, 1, 3, Double.NaN, 0, 0));
        Sited beside = Siting.solve(plan.with(Variant.GLIDE_PATH), Ground.lensAt(0),
            new Demand.GlidePath(Double.NaN, 15, 3, 1, 3, Double.NaN, 0, 0));
        ledger.number("F7 origin of a 15 m datum height", origin, 15 * 19.0811, 1e-3);
        ledger.number("F7 D1", beside.distanceM(), 17 * 19.0811, 1e-3);
        double tan = Angles.tanDeg(Angles.deg(2, 48));
        Sited sloping = Siting.solve(plan, Ground.sloping(0.8, 0.5), new Demand.EyeHeight(15.63));
        ledger.number("F6 uniform profile 0.8 %, lens 0.5 m", sloping.distanceM(), (15.63 - 0.5) / (tan + 0.008), 1e-3);
        Sited high = Siting.solve(plan, Ground.lensAt(1), new Demand.EyeHeight(15.63));
        ledger.number("F5 lens 1 m above the threshold", high.distanceM(), 319.58 - 20.4465, 0.01);
        Sited near = Siting.solve(plan, Ground.lensAt(0.3), new Demand.EyeHeight(15.63));
        ledger.number("F5 lens 0.3 m above: left alone under the 5th edition", near.distanceM(), 319.58, 0.01);
    }

    private static void tForm(Ledger ledger) {
        ledger.heading("icao 9.6 T form, 3 degrees, 15 m, level; 5.2 cut-offs; 5.3 bands");
        Plan plan = Plan.of(Edition.ICAO_5TH, Family.T_FORM_ABBREVIATED, 3, 45);
        Layout layout = Siting.solve(plan, Ground.lensAt(0), new Demand.EyeHeight(15)).layout();
        ledger.number("bar", layout.referenceAlongM(), 286.22, 0.01);
        String[] ids = {"fly-up-1", "fly-up-2", "fly-up-3", "fly-down-1", "fly-down-2", "fly-down-3"};
        double[] places = {241.22, 151.22, 61.22, 331.22, 421.22, 511.22};
        double[] cuts = {3, Angles.deg(2, 55), Angles.deg(2, 50), 3, Angles.deg(3, 7), Angles.deg(3, 14)};
        double[] heights = {12.64, 7.70, 3.03, 17.36, 22.94, 28.88};
        double[] drawn = {12.32, 7.39, 2.72, 17.03, 22.60, 28.53};
        Layout at280 = Builder.at(plan, Ground.lensAt(0), 280);
        for (int i = 0; i < ids.length; i++) {
            LightUnit unit = layout.unit(ids[i]);
            ledger.number(ids[i] + " place", unit.alongM(), places[i], 0.01);
            ledger.number(ids[i] + " cut-off", unit.settingDeg(), cuts[i], 1e-9);
            ledger.number(ids[i] + " height over threshold where it changes", changeM(layout, ids[i], heights[i]), heights[i], 0.01);
            ledger.number(ids[i] + " the same with the bar at 280 m", changeM(at280, ids[i], drawn[i]), drawn[i], 0.01);
        }
        ledger.number("fly-down-3 top", topM(layout), 53.73, 0.01);
        ledger.number("fly-down-3 top, bar at 280 m", topM(at280), 53.08, 0.01);
        ledger.number("bars only from (MEHT), printed 13 m", EyeHeights.mehtM(layout), 13, 0.5);
        ledger.number("bars only to, printed 17 m", EyeHeights.greatestOnSlopeM(layout, 0, false), 17, 0.5);
        ledger.number("1 fly-down to, printed 22 m (22.94 by 9.6)", changeM(layout, "fly-down-2", 23), 22, 1);
        ledger.number("2 fly-down to, printed 28 m (28.88 by 9.6)", changeM(layout, "fly-down-3", 29), 28, 1);
        ledger.number("3 fly-down to, printed 54 m", topM(layout), 54, 0.5);
        double[] feet = {41, 25, 57, 75, 94};
        String[] edges = {"fly-up-1", "fly-up-2", "fly-down-1", "fly-down-2", "fly-down-3"};
        for (int i = 0; i < feet.length; i++) {
            double edge = changeM(layout, edges[i], feet[i] * 0.3048) / 0.3048;
            ledger.number("Australian edge of " + edges[i] + " in feet", edge, feet[i], 1);
        }
        double third = changeM(layout, "fly-up-3", 3) / 0.3048;
        ledger.number("fly-up-3 in feet by 9.6", third, 9.9, 0.05);
        ledger.explained("fly-up-3, Australia", third, 7, "does not fit the geometry, pack 9.6 says so");
        ledger.number("fly-up-3 red limit 1 54 in feet", layout.unit("fly-up-3").alongM() * Angles.tanDeg(1.9) / 0.3048, 6.7, 0.05);
        ledger.number("Australian 3 fly-down top in feet", topM(layout) / 0.3048, 176, 1);
        ledger.explained("bar distance", layout.referenceAlongM(), 280, "drawn figure; 15 cot 3 is 286.22, pack gap 9");
        Layout whole = Builder.at(Plan.of(ED, Family.T_FORM, 3, 45), Ground.lensAt(0), 280);
        ledger.number("units of the whole form", whole.units().size(), 20, 0);
        ledger.number("units of one side", layout.units().size(), 10, 0);
        ledger.number("span of the wing bar", Math.abs(layout.unit("bar-4").rightM() - layout.unit("bar-1").rightM()), 24, 1e-9);
    }

    /** Eye height over the threshold near which a unit appears or goes. */
    private static double changeM(Layout layout, String id, double near) {
        int index = layout.units().indexOf(layout.unit(id));
        return Angles.change(near - 0.7, near + 0.7,
            h -> Signals.view(layout, new Eye(0, 0, h)).seen().get(index).colour() != Colour.NONE);
    }

    private static double topM(Layout layout) {
        int index = layout.units().indexOf(layout.unit("fly-down-3"));
        return Angles.change(40, 60, h -> Signals.view(layout, new Eye(0, 0, h)).seen().get(index).colour() != Colour.NONE);
    }

    private static void lateral(Ledger ledger) {
        ledger.heading("icao 9.8 lateral places");
        places(ledger, 45, FOUR, Lateral.Choice.STANDARD, 37.5, 46.5, 55.5, 64.5);
        places(ledger, 30, FOUR, Lateral.Choice.REDUCED, 25, 31, 37, 43);
        places(ledger, 30, TWO, Lateral.Choice.STANDARD, 25, 31);
        places(ledger, 18, TWO, Lateral.Choice.CONVERTIBLE, 24, 33);
        ledger.number("2.12 full bar end to end", 27 * 0.0125, 0.3375, 1e-9);
        ledger.number("2.12 reduced bar end to end", 18 * 0.0125, 0.225, 1e-9);
        ledger.number("2.12 two units", 6 * 0.0125, 0.075, 1e-9);
        ledger.number("2.13 range at which 9 m are 3', km", 9 / Angles.tanDeg(0.05) / 1000, 10.3, 0.05);
        ledger.number("2.13 range at which 6 m are 3', km", 6 / Angles.tanDeg(0.05) / 1000, 6.9, 0.05);
    }

    private static void places(Ledger ledger, double width, Family family, Lateral.Choice choice, double... printed) {
        Layout layout = Builder.at(Plan.of(ED, family, 3, width).with(choice), Ground.lensAt(0), 300);
        for (int i = 0; i < printed.length; i++) {
            LightUnit unit = layout.units().get(i);
            ledger.number(width + " m " + family.key() + " " + choice + " " + unit.id(), -unit.rightM(), printed[i], 1e-9);
        }
    }

    private static void signals(Ledger ledger) {
        ledger.heading("icao 9.9 signals (runway side first)");
        Layout four = Builder.at(Plan.of(ED, FOUR, 3, 45), Ground.lensAt(0), 300);
        Layout two = Builder.at(Plan.of(ED, TWO, 3, 30), Ground.lensAt(0), 300);
        double[] at = {Angles.deg(2, 29), Angles.deg(2, 31), Angles.deg(2, 49), Angles.deg(2, 51), Angles.deg(3, 9), Angles.deg(3, 11),
            Angles.deg(3, 29), Angles.deg(3, 31)};
        String[] patterns = {"RRRR", "RRRW", "RRRW", "RRWW", "RRWW", "RWWW", "RWWW", "WWWW"};
        List<Meaning> meanings = List.of(Meaning.WELL_BELOW, Meaning.BELOW, Meaning.BELOW, Meaning.ON_SLOPE, Meaning.ON_SLOPE,
            Meaning.ABOVE, Meaning.ABOVE, Meaning.WELL_ABOVE);
        for (int i = 0; i < at.length; i++) {
            View view = Signals.view(four, new Eye(-5000, 3, 5300 * Angles.tanDeg(at[i])));
            ledger.word("four at " + at[i], view.pattern(), patterns[i]);
            ledger.word("meaning", view.meaning(), meanings.get(i));
        }
        double[] twoAt = {Angles.deg(2, 44), Angles.deg(2, 46), Angles.deg(3, 14), Angles.deg(3, 16)};
        String[] twoPatterns = {"RR", "RW", "RW", "WW"};
        for (int i = 0; i < twoAt.length; i++) {
            View view = Signals.view(two, new Eye(-5000, 3, 5300 * Angles.tanDeg(twoAt[i])));
            ledger.word("two at " + twoAt[i], view.pattern(), twoPatterns[i]);
        }
    }

    private static void surfaces(Ledger ledger) {
        ledger.heading("icao 6.1 slopes of the surface at 3 degrees");
        Layout four = Builder.at(Plan.of(ED, FOUR, 3, 45), Ground.lensAt(0), 300);
        Layout beside = Builder.at(Plan.of(ED, FOUR, 3, 45).with(Variant.GLIDE_PATH), Ground.lensAt(0), 300);
        Layout two = Builder.at(Plan.of(ED, TWO, 3, 30), Ground.lensAt(0), 300);
        Layout form = Builder.at(Plan.of(ED, Family.T_FORM, 3, 45), Ground.lensAt(0), 286);
        GroundLine flat = GroundLine.level(0);
        Surface main = Surfaces.runway(four, 4, Approach.INSTRUMENT, Double.NaN, flat);
        ledger.number("four, standard", main.slopeDeg(), 1.93, 1e-9);
        double slope = Surfaces.runway(beside, 4, Approach.INSTRUMENT, Double.NaN, flat).slopeDeg();
        ledger.number("four, beside a glide path", slope, 1.847, 5e-4);
        ledger.number("two", Surfaces.runway(two, 1, Approach.VISUAL, Double.NaN, flat).slopeDeg(), 1.85, 1e-9);
        ledger.number("T form", Surfaces.runway(form, 4, Approach.VISUAL, Double.NaN, flat).slopeDeg(), 1.9, 1e-9);
        ledger.number("start", main.startAlongM(), -60, 0);
        ledger.number("T form at code 2, inner edge", Surfaces.runway(form, 2, Approach.VISUAL, Double.NaN, flat).innerEdgeM(), 150, 0);
        ledger.number("T form at code 2, length", Surfaces.runway(form, 2, Approach.VISUAL, Double.NaN, flat).lengthM(), 15000, 0);
        ledger.holds("four at non-instrument code 1 has no slope",
            !Surfaces.runway(four, 1, Approach.VISUAL, Double.NaN, flat).evaluable());
        ledger.number("34' in degrees", 34 / 60.0, 0.57, 0.005);
        ledger.number("54' in degrees", 54 / 60.0, 0.9, 1e-9);
        Margin on = Margins.point(main, new Spot(-1060, 0, 0), 0, 0);
        ledger.number("limit 1000 m out", on.limitM(), 1000 * Angles.tanDeg(1.93), 1e-9);
        Margin accurate = Margins.point(main, new Spot(-1060, 0, 0), 5, 1);
        ledger.number("limit with 5 m accuracy", accurate.limitM(), 995 * Angles.tanDeg(1.93), 1e-9);
        ledger.holds("300 m out 194 m aside lies inside, 196 m does not", main.contains(-360, 194) && !main.contains(-360, 196));
    }

    private static void others(Ledger ledger) {
        ledger.heading("icao 4.4 eye heights and 7 sector unit");
        ledger.number("A318 difference", 6.52 - 4.67, 1.85, 1e-9);
        ledger.number("A319 difference", 6.63 - 4.78, 1.85, 1e-9);
        double[][] feet = {{12, 3.66}, {19, 5.79}, {21, 6.40}, {23, 7.01}, {24, 7.32}, {26, 7.92}, {30, 9.14}, {33, 10.06}, {38, 11.58},
            {45, 13.72}};
        for (double[] pair : feet) {
            ledger.number(pair[0] + " ft in metres", pair[0] * Angles.FOOT_M, pair[1], 0.005);
        }
        List<Sector> sectors = Lights.heliportSector(ED, 6);
        ledger.number("on-slope sector, minutes", 60 * (sectors.get(2).toDeg() - sectors.get(2).fromDeg()), 45, 1e-9);
        ledger.number("slightly below sector, minutes", 60 * (sectors.get(1).toDeg() - sectors.get(1).fromDeg()), 15, 1e-9);
    }
}
