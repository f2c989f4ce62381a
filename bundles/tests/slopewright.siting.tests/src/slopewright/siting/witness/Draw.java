package slopewright.siting.witness;

import java.util.Random;

import slopewright.geometry.Profile;
import slopewright.siting.Approach;
import slopewright.siting.Input;
import slopewright.siting.Side;
import slopewright.siting.SitingRequest;
import slopewright.witness.Demand;
import slopewright.witness.Edges;
import slopewright.witness.Edition;
import slopewright.witness.Family;
import slopewright.witness.Ground;
import slopewright.witness.GroundLine;
import slopewright.witness.Lateral;
import slopewright.witness.Plan;
import slopewright.witness.Variant;
import slopewright.witness.Wheels;

/** Draws random layouts of one family under one rule set; the same seed draws the same ones. */
final class Draw {

    private final String combination;
    private final Edition edition;
    private final Family family;
    private final Random random;
    private SitingRequest.Builder request;
    private Plan plan;
    private Ground ground;
    private Demand demand;

    Draw(String combination) {
        this.combination = combination;
        edition = Trial.edition(combination);
        family = Trial.family(combination);
        random = Trial.random(combination.hashCode());
    }

    /** Returns the next layout. */
    Trial next(int number) {
        request = SitingRequest.builder();
        boolean helipad = family == Family.HELIPORT_PAIR || family == Family.HELIPORT_SECTOR
                || family.row() && (edition == Edition.ICAO_5TH || edition == Edition.ICAO_9TH) && random.nextInt(4) == 0;
        double slope = slopeDeg(helipad);
        double width = helipad ? 0 : 10 * between(1.5, 6);
        plan = Plan.of(edition, family, slope, width);
        request.set(Input.SLOPE, slope);
        if (!helipad) {
            request.set(Input.RUNWAY_WIDTH, width);
        }
        int code = 1 + random.nextInt(4);
        if (!helipad) {
            request.set(Input.CODE, (double) code);
        }
        boolean visual = random.nextBoolean();
        request.approach(visual ? Approach.VISUAL : Approach.INSTRUMENT);
        ground(helipad);
        side();
        edges(slope);
        if (family.bars()) {
            bars();
        }
        if (helipad) {
            hover();
        } else {
            lateral(code);
            demand(code);
        }
        turn();
        return new Trial(combination + " " + number, plan, ground, demand, code,
                visual ? slopewright.witness.Approach.VISUAL : slopewright.witness.Approach.INSTRUMENT, request.build());
    }

    private double between(double from, double to) {
        return Math.round((from + random.nextDouble() * (to - from)) * 1000) / 1000.0;
    }

    private double slopeDeg(boolean helipad) {
        if (family.tForm()) {
            return between(2.4, 3.1);
        }
        if (helipad) {
            return between(3, 9);
        }
        return random.nextInt(4) > 0 ? between(2.5, 4) : between(4, 9);
    }

    /** Lenses at one height, a ground of one slope, or a ground of straight pieces; the runway has the ground's slope or its own pieces. */
    private void ground(boolean helipad) {
        switch (random.nextInt(3)) {
            case 0 -> {
                double lens = between(-2, family.tForm() ? 0.5 : 3);
                ground = Ground.lensAt(lens);
                request.set(Input.LENS_HEIGHT, lens);
            }
            case 1 -> {
                double percent = between(-1.5, 1.5);
                double above = between(0.1, 0.9);
                ground = Ground.sloping(percent, above);
                request.set(Input.GROUND_SLOPE, percent).set(Input.LENS_ABOVE_GROUND, above);
            }
            default -> {
                double above = between(0.1, 0.9);
                double[] site = pieces();
                double[] runway = pieces();
                ground = new Ground(GroundLine.of(runway), GroundLine.of(site), above);
                request.set(Input.LENS_ABOVE_GROUND, above).ground(profile(site)).runwayProfile(helipad ? null : profile(runway));
            }
        }
    }

    private double[] pieces() {
        int count = 46;
        double[] pairs = new double[2 * count];
        double height = between(-1, 1);
        for (int i = 0; i < count; i++) {
            pairs[2 * i] = -1500 + 120 * i;
            pairs[2 * i + 1] = height;
            height += between(-1.5, 1.5);
        }
        return pairs;
    }

    private static Profile profile(double[] pairs) {
        double[] along = new double[pairs.length / 2];
        double[] height = new double[along.length];
        for (int i = 0; i < along.length; i++) {
            along[i] = pairs[2 * i];
            height[i] = pairs[2 * i + 1];
        }
        return Profile.of(along, height);
    }

    private void side() {
        boolean single = family == Family.T_FORM_ABBREVIATED || family == Family.TRI_COLOUR || family == Family.PULSATING;
        if (family.row() || family.bars() || single) {
            int side = random.nextInt(single ? 2 : 3);
            plan = plan.with(slopewright.witness.Side.values()[side]);
            request.side(Side.values()[side]);
        }
    }

    /** No text prints sectors of single units: they are entered, centred on the slope; the width below the on-path red is the product's. */
    private void edges(double slopeDeg) {
        if (family == Family.TRI_COLOUR || family == Family.PULSATING) {
            double sector = between(0.3, 1.4);
            request.set(Input.ON_SLOPE_SECTOR, sector).option(SitingRequest.OWN_SECTORS, "yes");
            double below = family == Family.PULSATING
                    ? Trial.rules(edition).value("pulsating.slightly-below-sector-deg").value() : 90;
            plan = plan.with(new Edges(slopeDeg - sector / 2 - below, slopeDeg - sector / 2, slopeDeg + sector / 2));
        }
    }

    private void bars() {
        int[] counts = family == Family.TWO_BAR ? new int[] {2, 4, 12} : new int[] {6, 16};
        int units = counts[random.nextInt(counts.length)];
        plan = plan.withBars(units, Double.NaN);
        request.set(Input.UNITS, (double) units);
        if (family == Family.TWO_BAR && random.nextInt(3) == 0) {
            plan = plan.with(Variant.LOW_CUSTOM);
            request.option("tradition", "tradition");
        }
    }

    private void hover() {
        double hover = between(1, 3);
        double above = between(1, 3);
        demand = new Demand.Hover(hover, above);
        request.set(Input.HOVER_HEIGHT, hover).set(Input.EYE_ABOVE_SKIDS, above).set(Input.SAFETY_AREA_WIDTH, 36.0)
                .set(Input.FATO_LENGTH, 24.0);
        if (family.row()) {
            plan = plan.with(Variant.HELIPORT);
        }
    }

    private void lateral(int code) {
        if (family.row()) {
            Lateral.Choice choice = Lateral.usual(edition, family, code);
            if (family == Family.TWO_UNIT_ROW && !edition.american() && random.nextInt(3) == 0) {
                choice = Lateral.Choice.CONVERTIBLE;
                request.option("layout", "enlarged");
            }
            plan = plan.with(choice);
        }
    }

    private void demand(int code) {
        if (family.tForm()) {
            eyeHeight(between(13.5, 16));
        } else if (family.row() && !edition.american() && random.nextInt(4) == 0 && (code > 2 || plan.slopeDeg() <= 4)) {
            glidePath();
        } else if (edition.american() && random.nextInt(2) == 0) {
            int group = 1 + random.nextInt(4);
            demand = new Demand.HeightGroup(group);
            request.set(Input.HEIGHT_GROUP, (double) group);
        } else if (family.row() && !edition.american() && random.nextInt(2) == 0) {
            double wheel = between(1, 13.9);
            boolean least = random.nextBoolean();
            demand = new Demand.Aeroplane(wheel,
                    least ? Wheels.minimumM(edition, wheel, false) : Wheels.desiredM(edition, wheel));
            request.set(Input.EYE_TO_WHEEL, wheel)
                    .clearance(least ? SitingRequest.Clearance.MINIMUM : SitingRequest.Clearance.DESIRED);
        } else {
            eyeHeight(between(8, 24));
        }
    }

    private void eyeHeight(double heightM) {
        demand = new Demand.EyeHeight(heightM);
        request.set(Input.EYE_HEIGHT, heightM);
    }

    private void glidePath() {
        if (plan.family() == Family.FOUR_UNIT_ROW && plan.slopeDeg() <= 4) {
            plan = plan.with(Variant.GLIDE_PATH);
        } else {
            request.settings(SitingRequest.Settings.STANDARD);
        }
        double least = between(0, 3);
        double most = least + between(0, 3);
        double wheel = between(1, 13.9);
        double minimum = Wheels.minimumM(edition, wheel, false);
        boolean byHeight = random.nextBoolean();
        double height = between(12, 18);
        double origin = between(200, 400);
        demand = new Demand.GlidePath(byHeight ? Double.NaN : origin, byHeight ? height : Double.NaN, plan.slopeDeg(), least, most, wheel,
                minimum, 0);
        request.set(Input.EYE_TO_ANTENNA_MIN, least).set(Input.EYE_TO_ANTENNA_MAX, most).set(Input.EYE_TO_WHEEL, wheel)
                .set(byHeight ? Input.REFERENCE_DATUM_HEIGHT : Input.GLIDE_PATH_ORIGIN, byHeight ? height : origin);
    }

    /** The witness counts a turn to the right as the landing pilot sees it, the product clockwise from above as the unit looks outward. */
    private void turn() {
        boolean turns = (family.row() || family.bars()) && !(demand instanceof Demand.GlidePath) && !(demand instanceof Demand.Hover);
        if (turns && random.nextInt(3) == 0) {
            double turn = between(-5, 5);
            plan = plan.turned(turn);
            request.set(Input.AXIS_TURN, -turn);
        }
    }
}
