package slopewright.evaluation.tolerance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.IntToDoubleFunction;
import java.util.stream.Stream;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import slopewright.siting.Families;
import slopewright.siting.Input;
import slopewright.siting.Siting;
import slopewright.siting.SitingException;
import slopewright.siting.SitingRequest;
import slopewright.standards.RuleSet;
import slopewright.standards.RuleSets;
import slopewright.witness.Builder;
import slopewright.witness.Edges;
import slopewright.witness.Edition;
import slopewright.witness.EyeHeights;
import slopewright.witness.Family;
import slopewright.witness.Ground;
import slopewright.witness.Layout;
import slopewright.witness.LightUnit;
import slopewright.witness.Plan;
import slopewright.witness.Sector;
import slopewright.witness.Side;

/**
 * The worst cases of the eye height, held against brute force: every unit of the second implementation is put off its angle, level and
 * place, and its lights are looked at anew each time. No such layout may lie beyond the worst case, and the worst case must be one of them.
 */
class ToleranceWitnessTest {

    /** A dozen of each pair in the build; 10^3 of all are a minute. */
    private static final int USUAL = 12;
    private static final int TRIALS = 60;
    private static final double SAME_M = 1e-6;
    private static final double MINUTE_DEG = 1.0 / 60;

    private Random random;

    static Stream<String> combinations() {
        return Stream.of(Edition.values()).flatMap(edition -> Stream.of(Family.values())
                .filter(family -> edition.covers(family) && atRunways(family) && rules(edition).covers(family.key()))
                .map(family -> edition + " " + family));
    }

    private static boolean atRunways(Family family) {
        return family != Family.HELIPORT_PAIR && family != Family.HELIPORT_SECTOR && family != Family.ALIGNMENT_PANELS;
    }

    private static RuleSet rules(Edition edition) {
        return RuleSets.find(edition.key()).orElseThrow();
    }

    private double between(double from, double to) {
        return Math.round((from + random.nextDouble() * (to - from)) * 1000) / 1000.0;
    }

    @ParameterizedTest
    @MethodSource("combinations")
    void noLayoutIsWorseThanTheWorstCase(String combination) {
        random = new Random(combination.hashCode() + Long.getLong("slopewright.witness.seed", 0));
        Edition edition = Edition.valueOf(combination.split(" ")[0]);
        Family family = Family.valueOf(combination.split(" ")[1]);
        int count = Integer.getInteger("slopewright.witness.cases", USUAL);
        int compared = 0;
        for (int i = 0; i < count; i++) {
            compared += compare(combination + " " + i, edition, family) ? 1 : 0;
        }
        assertTrue(compared * 5 >= count * 4, compared + " of " + count);
    }

    private boolean compare(String name, Edition edition, Family family) {
        double slope = family.tForm() ? between(2.5, 3.1) : between(2.5, 4);
        double lens = between(-1, family.tForm() ? 0.5 : 2);
        double width = between(18, 60);
        SitingRequest.Builder builder = SitingRequest.builder().set(Input.SLOPE, slope).set(Input.RUNWAY_WIDTH, width)
                .set(Input.CODE, 4.0).set(Input.LENS_HEIGHT, lens)
                .set(Input.EYE_HEIGHT, family.tForm() ? between(13.5, 16) : between(9, 22));
        Plan plan = Plan.of(edition, family, slope, width);
        if (family == Family.TRI_COLOUR || family == Family.PULSATING) {
            double sector = between(0.5, 1.4);
            builder.set(Input.ON_SLOPE_SECTOR, sector).option(SitingRequest.OWN_SECTORS, "yes");
            plan = plan.with(new Edges(slope - sector / 2 - 1, slope - sector / 2, slope + sector / 2));
        } else if (family.row() && random.nextInt(3) == 0) {
            builder.side(slopewright.siting.Side.BOTH);
            plan = plan.with(Side.BOTH);
        } else if (family.bars()) {
            builder.set(Input.UNITS, (double) plan.units());
        }
        Tolerances tolerances = new Tolerances(between(0, 5), between(0, 0.1), between(0, 1));
        Siting siting;
        try {
            siting = Families.site(family.key(), builder.build(), rules(edition));
        } catch (SitingException e) {
            return false;
        }
        WorstCase worst = ToleranceStudy.of(builder.build(), rules(edition), siting, Optional.empty(), List.of(), tolerances, 0, 1)
                .worst(Quantity.EYE_HEIGHT).orElseThrow();
        hold(name + " " + tolerances, Builder.at(plan, Ground.lensAt(lens), siting.distanceM()), tolerances, worst);
        return true;
    }

    private void hold(String name, Layout layout, Tolerances tolerances, WorstCase worst) {
        assertEquals(heightM(layout), worst.nominalM(), SAME_M, name);
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (int corner = 0; corner < 8; corner++) {
            int signs = corner;
            double height = heightM(off(layout, tolerances, part -> (signs >> part & 1) == 0 ? -1 : 1));
            least = Math.min(least, height);
            most = Math.max(most, height);
        }
        assertEquals(least, worst.lowM(), SAME_M, name + ": least");
        assertEquals(most, worst.highM(), SAME_M, name + ": most");
        for (int trial = 0; trial < TRIALS; trial++) {
            boolean atEnds = random.nextBoolean();
            double height = heightM(off(layout, tolerances, part -> atEnds ? random.nextInt(3) - 1 : 2 * random.nextDouble() - 1));
            assertTrue(Double.isNaN(height) || height >= worst.lowM() - SAME_M && height <= worst.highM() + SAME_M,
                    name + ": " + height + " is beyond " + worst);
        }
    }

    private static double heightM(Layout layout) {
        return EyeHeights.mehtM(layout);
    }

    /** Each unit off its angle (part 0), level (1) and place (2) by a share of the tolerances from -1 to 1. */
    private static Layout off(Layout layout, Tolerances tolerances, IntToDoubleFunction share) {
        List<LightUnit> units = new ArrayList<>();
        for (LightUnit unit : layout.units()) {
            double turnDeg = share.applyAsDouble(0) * tolerances.angleMinutes() * MINUTE_DEG;
            double levelM = share.applyAsDouble(1) * tolerances.levelM();
            double placeM = share.applyAsDouble(2) * tolerances.placeM();
            List<Sector> sectors = unit.sectors().stream()
                    .map(sector -> new Sector(sector.fromDeg() + turnDeg, sector.toDeg() + turnDeg, sector.colour(), sector.state()))
                    .toList();
            units.add(new LightUnit(unit.id(), unit.bar(), unit.alongM() + placeM, unit.rightM(), unit.heightM() + levelM,
                    unit.settingDeg() + turnDeg, sectors));
        }
        return new Layout(layout.edition(), layout.family(), layout.slopeDeg(), layout.axisTurnDeg(), layout.beamHalfWidthDeg(), units);
    }
}
