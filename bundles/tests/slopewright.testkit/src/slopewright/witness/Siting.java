package slopewright.witness;

/** Solves the distance of an indicator by walking outward along the ground until the lights give what is asked for. */
public final class Siting {
    private static final double WALK_FROM_M = 1e-4;
    private static final double WALK_TO_M = 6000;
    private static final double WALK_STEP_M = 5;

    private Siting() {
    }

    /** The siting of a plan on a ground for a demand. */
    public static Sited solve(Plan plan, Ground ground, Demand demand) {
        if (!plan.edition().covers(plan.family())) {
            throw new IllegalArgumentException(plan.edition().key() + " does not cover " + plan.family().key());
        }
        double exact = exactDistanceM(plan, ground, demand);
        double distance = exact;
        double limit = Transcription.maybe(plan.edition(), Transcription.ALL, "level-correction-limit-m").orElse(0);
        if (limit > 0 && plan.family().row() && !(demand instanceof Demand.Hover)) {
            double level = exactDistanceM(plan, new Ground(ground.runway(), GroundLine.level(0), 0), demand);
            if (Math.abs(ground.lensM(level)) <= limit) {
                distance = level;
            }
        }
        return describe(Builder.at(plan, ground, distance), exact);
    }

    /** What a given layout gives: the same record, with its own distance as the exact one. */
    public static Sited describe(Layout layout) {
        return describe(layout, layout.referenceAlongM());
    }

    private static Sited describe(Layout layout, double exactM) {
        return new Sited(layout.referenceAlongM(), exactM, layout, Settings.lowestOnSlopeDeg(layout), EyeHeights.mehtM(layout),
            EyeHeights.nominalM(layout, 0));
    }

    /** The eye height over the threshold that a demand asks for, metres: clearance plus eye-to-wheel, or as given. */
    public static double eyeHeightM(Edition edition, Demand demand) {
        if (demand instanceof Demand.EyeHeight eye) {
            return eye.heightM();
        }
        if (demand instanceof Demand.Aeroplane aeroplane) {
            return aeroplane.eyeToWheelM() + aeroplane.clearanceM();
        }
        if (demand instanceof Demand.HeightGroup group) {
            return Transcription.number(edition, Transcription.ALL, "group." + group.number() + ".crossing-height-ft") * Angles.FOOT_M;
        }
        if (demand instanceof Demand.Hover hover) {
            return hover.hoverM() + hover.eyeAboveSkidsM();
        }
        throw new IllegalArgumentException("a glide path asks for no eye height");
    }

    /** Distance with every level difference made good, metres. */
    public static double exactDistanceM(Plan plan, Ground ground, Demand demand) {
        if (demand instanceof Demand.GlidePath path) {
            return glidePathM(plan, ground, path);
        }
        double heightM = eyeHeightM(plan.edition(), demand);
        if (demand instanceof Demand.Hover || plan.family().tForm()) {
            return slopeDistanceM(ground, plan.slopeDeg(), heightM);
        }
        return leastEyeDistanceM(plan, ground, heightM);
    }

    /** Where a lens has the nominal slope at a height over the threshold, metres. */
    public static double slopeDistanceM(Ground ground, double slopeDeg, double heightM) {
        double tan = Angles.tanDeg(slopeDeg);
        return Angles.firstTrue(ground.site().bendsM(0, WALK_TO_M), x -> x * tan + ground.lensM(x) >= heightM);
    }

    /** Least distance at which the least on-slope eye height over the threshold reaches a height, metres. */
    public static double leastEyeDistanceM(Plan plan, Ground ground, double heightM) {
        return Angles.firstTrue(WALK_FROM_M, WALK_TO_M, WALK_STEP_M, x -> EyeHeights.mehtM(Builder.at(plan, ground, x)) >= heightM);
    }

    /** Where a unit meant for a place on level ground goes on the ground as it is (level difference made good), metres. */
    static double levelled(Ground ground, double placeM, double tan) {
        double target = placeM * tan;
        return Angles.firstTrue(ground.site().bendsM(placeM - 1000, placeM + 3000), x -> x * tan + ground.lensM(x) >= target);
    }

    /** Distance of the effective origin of a glide path from the threshold, metres: where it meets the runway profile. */
    public static double originM(GroundLine runway, Demand.GlidePath path) {
        if (!Double.isNaN(path.originM())) {
            return path.originM();
        }
        double tan = Angles.tanDeg(path.pathDeg());
        return Angles.firstTrue(runway.bendsM(0, WALK_TO_M), x -> x * tan + runway.heightM(x) >= path.thresholdHeightM());
    }

    /**
     * Beside a glide path. ICAO family: the eye line is the glide path raised by the mean eye-to-antenna height; the row goes
     * where a lens has that line at the visual slope, and further in where the minimum clearance is not reached (Fig 5-19 b).
     * United States: at the origin, height group 4 300 ft beyond it (UFC 3-535-01 12-3.1.1).
     */
    private static double glidePathM(Plan plan, Ground ground, Demand.GlidePath path) {
        double origin = originM(ground.runway(), path);
        if (plan.edition().american()) {
            double extraFt = path.group() == 4 ? Transcription.number(plan.edition(), Transcription.ALL, "glide-path.group-4.extra-ft") : 0;
            return origin + extraFt * Angles.FOOT_M;
        }
        double tan = Angles.tanDeg(plan.slopeDeg());
        double eyeLine = origin * tan + ground.runway().heightM(origin) + path.antennaMeanM();
        double distance = slopeDistanceM(ground, plan.slopeDeg(), eyeLine);
        if (!Double.isNaN(path.eyeToWheelM())) {
            double least = path.eyeToWheelM() + path.minimumClearanceM();
            if (EyeHeights.mehtM(Builder.at(plan, ground, distance)) < least) {
                distance = Math.max(distance, leastEyeDistanceM(plan, ground, least));
            }
        }
        return distance;
    }
}
