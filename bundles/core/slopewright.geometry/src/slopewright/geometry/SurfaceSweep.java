package slopewright.geometry;

/**
 * Compares many points with one surface: flat arrays in, flat arrays out, no object for a point. Immutable, safe for use by many
 * threads at once.
 */
public final class SurfaceSweep {

    private static final int BLOCK = 256;
    private static final double PUSH = 1e300;
    private static final double FAR_BELOW = -1e100;
    /** Covers what rounding does to a bound, metres. */
    private static final double ROUNDING_M = 1e-6;

    private final double startAlongM;
    private final double startRightM;
    private final double startHeightM;
    private final double halfInnerEdgeM;
    private final double divergence;
    private final double lengthM;
    private final double rise;
    private final double cosTurn;
    private final double sinTurn;
    /** How far the sides of the outline move apart for each metre that it grows. */
    private final double sideShare;
    /** One for each thread: what was made anew would not be in the fastest memory. */
    private final ThreadLocal<Block> scratch = ThreadLocal.withInitial(Block::new);

    /** Prepares a surface. */
    public SurfaceSweep(ProtectionSurface surface) {
        startAlongM = surface.startAlongM();
        startRightM = surface.startRightM();
        startHeightM = surface.startHeightM();
        halfInnerEdgeM = surface.innerEdgeM() / 2;
        divergence = surface.divergence();
        lengthM = surface.lengthM();
        rise = Angles.tanDeg(surface.slopeDeg());
        cosTurn = Math.cos(Math.toRadians(surface.axisTurnDeg()));
        sinTurn = Math.sin(Math.toRadians(surface.axisTurnDeg()));
        sideShare = Math.hypot(1, surface.divergence());
    }

    /**
     * Compares one point.
     *
     * @return height above the surface in metres, negative below it; NaN where the point lies outside
     */
    public double excessM(double alongM, double rightM, double heightM) {
        double back = startAlongM - alongM;
        double aside = rightM - startRightM;
        double outward = back * cosTurn - aside * sinTurn;
        double offset = Math.abs(back * sinTurn + aside * cosTurn);
        boolean inside = outward >= 0 && outward <= lengthM && offset <= halfInnerEdgeM + outward * divergence;
        return inside ? heightM - startHeightM - outward * rise : Double.NaN;
    }

    /**
     * Returns a bound for a shape: {@link ProtectionSurface} never compares it with a greater height above the surface. For searches that
     * pass over what cannot decide.
     *
     * @param alongM    middle of a circle that holds the shape in plan, metres
     * @param rightM    the same
     * @param topM      its highest top, the accuracy of the height added, metres
     * @param radiusM   radius of that circle, metres, zero or more
     * @param accuracyM radius in which its true place may lie, metres, zero or more
     * @return metres; negative infinity where the shape lies outside
     */
    public double mostExcessM(double alongM, double rightM, double topM, double radiusM, double accuracyM) {
        double back = startAlongM - alongM;
        double aside = rightM - startRightM;
        double outward = back * cosTurn - aside * sinTurn;
        double offset = Math.abs(back * sinTurn + aside * cosTurn);
        double reach = radiusM + accuracyM + ROUNDING_M;
        if (outward < -reach || outward > lengthM + reach || offset - outward * divergence > halfInnerEdgeM + reach * sideShare) {
            return Double.NEGATIVE_INFINITY;
        }
        double lowest = rise >= 0 ? Math.max(0, outward - reach) : Math.min(lengthM, outward + reach);
        return topM - startHeightM - lowest * rise + ROUNDING_M;
    }

    /**
     * Returns whether the whole of a circle in plan lies under or over the surface; no where it is too near the outline to tell.
     *
     * @param alongM  its middle, metres
     * @param rightM  the same
     * @param radiusM its radius, metres, zero or more
     */
    public boolean holdsCircle(double alongM, double rightM, double radiusM) {
        double back = startAlongM - alongM;
        double aside = rightM - startRightM;
        double outward = back * cosTurn - aside * sinTurn;
        double offset = Math.abs(back * sinTurn + aside * cosTurn);
        double reach = radiusM + ROUNDING_M;
        return outward >= reach && outward <= lengthM - reach && offset - outward * divergence <= halfInnerEdgeM - reach * sideShare;
    }

    /**
     * Compares a run of points.
     *
     * @param alongM  places, metres
     * @param rightM  places, metres
     * @param heightM heights, metres
     * @param from    first index
     * @param to      index after the last
     * @param excessM receives the heights above the surface at the same indices, NaN outside
     * @return the index of the highest excess, -1 where every point lies outside
     */
    public int sweep(double[] alongM, double[] rightM, double[] heightM, int from, int to, double[] excessM) {
        int worst = -1;
        double highest = Double.NEGATIVE_INFINITY;
        Block block = scratch.get();
        for (int at = from; at < to; at += BLOCK) {
            int count = Math.min(BLOCK, to - at);
            double[] found = block.compare(alongM, rightM, heightM, at, count);
            for (int i = 0; i < count; i++) {
                double excess = found[i];
                excessM[at + i] = excess < FAR_BELOW ? Double.NaN : excess;
                if (excess > highest && excess >= FAR_BELOW) {
                    highest = excess;
                    worst = at + i;
                }
            }
        }
        return worst;
    }

    /**
     * What a run of points says together.
     *
     * @param worst   the index of the highest excess, the first of them where several are as high, -1 where every point lies outside
     * @param excessM that excess, metres, negative below the surface; negative infinity where every point lies outside
     * @param inside  how many lie under or over the surface
     * @param above   how many stand above it
     */
    public record Tally(int worst, double excessM, int inside, int above) {

        /** Of no points. */
        public static final Tally NONE = new Tally(-1, Double.NEGATIVE_INFINITY, 0, 0);

        /** Returns both together; the indices count in the same arrays. */
        public Tally with(Tally other) {
            boolean otherGoverns = other.worst >= 0 && (worst < 0 || other.excessM > excessM
                    || other.excessM == excessM && other.worst < worst);
            return new Tally(otherGoverns ? other.worst : worst, otherGoverns ? other.excessM : excessM, inside + other.inside,
                    above + other.above);
        }
    }

    /** Returns what a run of points says together, without keeping what each of them says: memory is read and not written. */
    public Tally tally(double[] alongM, double[] rightM, double[] heightM, int from, int to) {
        Block block = scratch.get();
        int worst = -1;
        double highest = Double.NEGATIVE_INFINITY;
        int inside = 0;
        int above = 0;
        for (int at = from; at < to; at += BLOCK) {
            int count = Math.min(BLOCK, to - at);
            double[] found = block.compare(alongM, rightM, heightM, at, count);
            for (int i = 0; i < count; i++) {
                double excess = found[i];
                inside += excess >= FAR_BELOW ? 1 : 0;
                above += excess > 0 ? 1 : 0;
                if (excess > highest && excess >= FAR_BELOW) {
                    highest = excess;
                    worst = at + i;
                }
            }
        }
        return new Tally(worst, highest, inside, above);
    }

    /**
     * What a block of points is worked out in. Each step is a loop of its own over arrays that stay in the fastest memory: a machine takes
     * several points at a time only in a loop of few operations whose arrays all count from nought, so the points are copied in first.
     */
    private final class Block {
        private final double[] outwardM = new double[BLOCK];
        private final double[] asideM = new double[BLOCK];
        private final double[] outsideM = new double[BLOCK];
        private final double[] excessM = new double[BLOCK];

        /**
         * Returns the heights above the surface of points from an index on. A point outside the outline is pushed far below the surface
         * instead of being skipped; what it lies outside by is found without a maximum: each part is nought within and twice that without.
         * The operations on a point and their order are those of {@link SurfaceSweep#excessM}, and so is what comes out, to the last bit.
         */
        private double[] compare(double[] alongM, double[] rightM, double[] heightM, int from, int count) {
            System.arraycopy(alongM, from, outwardM, 0, count);
            System.arraycopy(rightM, from, asideM, 0, count);
            fromStart(count);
            turn(count);
            outside(count);
            System.arraycopy(heightM, from, asideM, 0, count);
            excess(count);
            return excessM;
        }

        private void fromStart(int count) {
            double along = startAlongM;
            double right = startRightM;
            for (int i = 0; i < count; i++) {
                outwardM[i] = along - outwardM[i];
            }
            for (int i = 0; i < count; i++) {
                asideM[i] = asideM[i] - right;
            }
        }

        private void turn(int count) {
            double cos = cosTurn;
            double sin = sinTurn;
            for (int i = 0; i < count; i++) {
                outsideM[i] = Math.abs(outwardM[i] * sin + asideM[i] * cos);
            }
            for (int i = 0; i < count; i++) {
                outwardM[i] = outwardM[i] * cos - asideM[i] * sin;
            }
        }

        private void outside(int count) {
            double half = halfInnerEdgeM;
            double widening = divergence;
            double length = lengthM;
            for (int i = 0; i < count; i++) {
                outsideM[i] = outsideM[i] - (half + outwardM[i] * widening);
            }
            for (int i = 0; i < count; i++) {
                outsideM[i] = Math.abs(outwardM[i]) - outwardM[i] + (Math.abs(outwardM[i] - length) + (outwardM[i] - length))
                        + (Math.abs(outsideM[i]) + outsideM[i]);
            }
        }

        private void excess(int count) {
            double start = startHeightM;
            double slope = rise;
            for (int i = 0; i < count; i++) {
                excessM[i] = asideM[i] - start - outwardM[i] * slope - outsideM[i] * PUSH;
            }
        }
    }
}
