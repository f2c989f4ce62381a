package slopewright.witness;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Puts the units of a plan at a distance on the ground. */
public final class Builder {
    private Builder() {
    }

    /** The layout with the row, wing bar, near bar or unit at a distance from the threshold, metres. */
    public static Layout at(Plan plan, Ground ground, double distanceM) {
        List<LightUnit> units = switch (plan.family()) {
            case FOUR_UNIT_ROW, TWO_UNIT_ROW -> row(plan, ground, distanceM);
            case TWO_BAR, THREE_BAR -> bars(plan, ground, distanceM);
            case T_FORM, T_FORM_ABBREVIATED -> tForm(plan, ground, distanceM);
            case HELIPORT_PAIR -> pair(plan, ground, distanceM);
            case HELIPORT_SECTOR -> single(plan, ground, distanceM, Lights.heliportSector(plan.edition(), plan.slopeDeg()));
            case TRI_COLOUR -> single(plan, ground, distanceM, Lights.triColour(plan.edges()));
            case PULSATING -> single(plan, ground, distanceM, Lights.pulsating(plan.edges()));
            case ALIGNMENT_PANELS -> throw new IllegalArgumentException("panels have their own type");
        };
        return new Layout(plan.edition(), plan.family(), plan.slopeDeg(), plan.axisTurnDeg(), Double.NaN, units);
    }

    /**
     * A given row: places, lens heights and settings of its units from the runway outward; letters run inward, A outermost.
     *
     * @param edition rule text
     * @param slopeDeg nominal slope, degrees
     * @param axisTurnDeg turn of the axis, degrees
     * @param alongM distances from the threshold, metres
     * @param rightM offsets from the centre line, metres
     * @param heightM lens heights above the threshold, metres
     * @param settingDeg settings, degrees
     */
    public static Layout givenRow(Edition edition, double slopeDeg, double axisTurnDeg, double[] alongM, double[] rightM,
            double[] heightM, double[] settingDeg) {
        List<LightUnit> list = new ArrayList<>();
        int count = alongM.length;
        for (int i = 0; i < count; i++) {
            String letter = String.valueOf((char) ('A' + count - 1 - i));
            list.add(new LightUnit(letter, rightM[i] < 0 ? "left" : "right", alongM[i], rightM[i], heightM[i], settingDeg[i],
                Lights.change(settingDeg[i])));
        }
        return new Layout(edition, count == 4 ? Family.FOUR_UNIT_ROW : Family.TWO_UNIT_ROW, slopeDeg, axisTurnDeg, Double.NaN, list);
    }

    /**
     * Given bars of a plan: distances, lens heights and settings, near to far, in metres and degrees; one unit a bar and side
     * stands for the bar.
     */
    public static Layout givenBars(Plan plan, double[] distanceM, double[] heightM, double[] settingDeg) {
        List<String> names = distanceM.length == 2 ? List.of("near", "far") : List.of("near", "middle", "far");
        List<LightUnit> list = new ArrayList<>();
        for (int b = 0; b < names.size(); b++) {
            double edge = Lateral.barM(plan.edition(), plan.family(), 1).get(0);
            for (int sign : signs(plan)) {
                list.add(new LightUnit(names.get(b) + (sign < 0 ? "-left" : "-right"), names.get(b), distanceM[b],
                    sign * (plan.runwayWidthM() / 2 + edge), heightM[b], settingDeg[b], Lights.change(settingDeg[b])));
            }
        }
        return new Layout(plan.edition(), plan.family(), plan.slopeDeg(), plan.axisTurnDeg(), Double.NaN, list);
    }

    /** Signs of the sides of a plan: -1 left, +1 right. */
    private static List<Integer> signs(Plan plan) {
        return switch (plan.side()) {
            case LEFT -> List.of(-1);
            case RIGHT -> List.of(1);
            case BOTH -> List.of(-1, 1);
        };
    }

    private static List<LightUnit> row(Plan plan, Ground ground, double distanceM) {
        Map<String, Double> settings = Settings.row(plan.edition(), plan.family(), plan.variant(), plan.slopeDeg());
        List<String> inward = new ArrayList<>(settings.keySet());
        List<Double> edge = Lateral.rowM(plan.edition(), plan.family(), plan.lateral());
        List<LightUnit> list = new ArrayList<>();
        for (int sign : signs(plan)) {
            String bar = sign < 0 ? "left" : "right";
            String prefix = plan.side() == Side.BOTH ? bar + "-" : "";
            for (int i = 0; i < edge.size(); i++) {
                String letter = inward.get(edge.size() - 1 - i);
                double setting = settings.get(letter);
                list.add(new LightUnit(prefix + letter, bar, distanceM, sign * (plan.runwayWidthM() / 2 + edge.get(i)),
                    ground.lensM(distanceM), setting, Lights.change(setting)));
            }
        }
        return list;
    }

    /** Units a bar and side: 2 units 1, 4 units 2, 6 units 2, 12 units 3 on both sides, 16 units 3, 3, 2 on both sides. */
    private static int perBar(int units, String bar) {
        return switch (units) {
            case 2 -> 1;
            case 4, 6 -> 2;
            case 12 -> 3;
            case 16 -> bar.equals("far") ? 2 : 3;
            default -> throw new IllegalArgumentException("no bars of " + units + " units");
        };
    }

    private static List<LightUnit> bars(Plan plan, Ground ground, double distanceM) {
        double spacing = plan.barSpacingM();
        if (Double.isNaN(spacing)) {
            spacing = Transcription.number(plan.edition(), plan.family(), "bar-spacing-ft") * Angles.FOOT_M;
        }
        List<String> names = plan.family() == Family.TWO_BAR ? List.of("near", "far") : List.of("near", "middle", "far");
        List<Integer> signs = plan.units() > 6 ? List.of(-1, 1) : signs(plan);
        List<LightUnit> list = new ArrayList<>();
        for (int b = 0; b < names.size(); b++) {
            String bar = names.get(b);
            double setting = Settings.bar(plan.edition(), plan.family(), plan.variant(), plan.slopeDeg(), bar);
            double along = distanceM + b * spacing;
            for (int sign : signs) {
                int number = 0;
                for (double edge : Lateral.barM(plan.edition(), plan.family(), perBar(plan.units(), bar))) {
                    number++;
                    list.add(new LightUnit(bar + "-" + (sign < 0 ? "left-" : "right-") + number, bar, along,
                        sign * (plan.runwayWidthM() / 2 + edge), ground.lensM(along), setting, Lights.change(setting)));
                }
            }
        }
        return list;
    }

    /**
     * Wing bar at the distance; every leg unit at its printed offset from the level place of the bar, then moved until its
     * cut-off is over the threshold as high as on level ground (Fig 5-17 d, e).
     */
    private static List<LightUnit> tForm(Plan plan, Ground ground, double distanceM) {
        Edition edition = plan.edition();
        Family family = plan.family();
        double slope = plan.slopeDeg();
        double nominal = distanceM * Angles.tanDeg(slope) + ground.lensM(distanceM);
        double level = nominal / Angles.tanDeg(slope);
        double line = plan.runwayWidthM() / 2 + Lateral.legLineM(edition, family);
        List<LightUnit> list = new ArrayList<>();
        List<Integer> signs = family == Family.T_FORM ? List.of(-1, 1) : signs(plan);
        for (int sign : signs) {
            String side = signs.size() > 1 ? sign < 0 ? "left-" : "right-" : "";
            int number = 0;
            for (double edge : Lateral.wingBarM(edition, family)) {
                number++;
                list.add(new LightUnit(side + "bar-" + number, "bar", distanceM, sign * (plan.runwayWidthM() / 2 + edge),
                    ground.lensM(distanceM), slope, Lights.wingBar(edition, family)));
            }
            for (String leg : List.of("fly-up", "fly-down")) {
                for (int n = 1; n <= 3; n++) {
                    double offset = Transcription.number(edition, family, "leg." + n + ".offset-m");
                    double cut = Settings.leg(edition, family, slope, leg, n);
                    double place = leg.equals("fly-up") ? level - offset : level + offset;
                    double along = Siting.levelled(ground, place, Angles.tanDeg(cut));
                    list.add(new LightUnit(side + leg + "-" + n, leg, along, sign * line, ground.lensM(along), cut,
                        leg.equals("fly-up") ? Lights.flyUp(edition, family, cut) : Lights.flyDown(edition, family, cut)));
                }
            }
        }
        return list;
    }

    private static List<LightUnit> pair(Plan plan, Ground ground, double distanceM) {
        double half = Transcription.number(plan.edition(), plan.family(), "on-path-half-min") / 60;
        double width = Transcription.number(plan.edition(), plan.family(), "green-width-deg");
        double spacing = Transcription.number(plan.edition(), plan.family(), "spacing-ft") * Angles.FOOT_M;
        double low = plan.slopeDeg() + half - width;
        double high = plan.slopeDeg() - half;
        return List.of(
            new LightUnit("low", "pair", distanceM, -spacing / 2, ground.lensM(distanceM), low, Lights.pairUnit(plan.edition(), low)),
            new LightUnit("high", "pair", distanceM, spacing / 2, ground.lensM(distanceM), high, Lights.pairUnit(plan.edition(), high)));
    }

    /** One unit: beside the runway where there is one, else on the approach line. */
    private static List<LightUnit> single(Plan plan, Ground ground, double distanceM, List<Sector> sectors) {
        double right = 0;
        if (plan.runwayWidthM() > 0) {
            double edge = Transcription.maybe(plan.edition(), plan.family().key(), "inner-unit-to-edge-ft").orElse(0) * Angles.FOOT_M;
            right = (plan.side() == Side.RIGHT ? 1 : -1) * (plan.runwayWidthM() / 2 + edge);
        }
        return List.of(new LightUnit("unit", "unit", distanceM, right, ground.lensM(distanceM), plan.slopeDeg(), sectors));
    }
}
