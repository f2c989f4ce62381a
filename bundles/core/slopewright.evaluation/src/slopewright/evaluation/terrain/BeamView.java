package slopewright.evaluation.terrain;

import java.util.List;
import java.util.Optional;

import slopewright.evaluation.obstacles.ObstacleComparison;
import slopewright.evaluation.obstacles.SurfaceComparison;
import slopewright.evaluation.obstacles.Surroundings;
import slopewright.geometry.Angles;
import slopewright.geometry.Curvature;
import slopewright.geometry.FramePoint;
import slopewright.geometry.ProtectionSurface;

/**
 * What stands between a lens and the sector in which its light must be seen. The line of sight starts at the lens and rises with the lower
 * edge of the sector; the Earth curves away under it, less what the air bends it (coefficient {@link Curvature#USUAL_REFRACTION} unless
 * another is given). Whether the ground hides it only a model of the terrain knows that lies under the whole sector.
 *
 * @param state     what was found
 * @param ground    where the ground stands highest against the line, empty where no model lies under the sector
 * @param other     the obstacle or survey point that stands highest against it, empty where none is in the sector
 * @param knownToM  how far out the ground is known without a gap, metres from the lens
 * @param surveyed  whether a survey says that nothing else stands in the sector: a model of the ground knows no tree and no house
 */
public record BeamView(State state, Optional<Highest> ground, Optional<ObstacleComparison> other, double knownToM,
        boolean surveyed) {

    private static final double LEAST_STEP_M = 10;

    /** What is known of a line of sight. */
    public enum State {
        /** Nothing stands above it, the accuracies on the safe side. */
        SEEN,
        /** The ground, or something on it, stands above it. */
        HIDDEN,
        /** The ground may stand above it: the model is not accurate enough to tell. */
        NOT_TOLD,
        /** Nobody knows: no model lies under the whole sector, no survey reaches over it, or something could not be compared. */
        NOT_EVALUATED
    }

    /**
     * Where the ground stands highest against a line of sight.
     *
     * @param place   the point of the model
     * @param aboveM  by how much it stands above the line, metres, negative below
     * @param atMostM the same with the accuracies of the model on the safe side
     */
    public record Highest(FramePoint place, double aboveM, double atMostM) {
    }

    /**
     * Looks from a lens.
     *
     * @param lens         the lens
     * @param sector       the sector over the ground, its slope that of its lower edge; it begins at the lens
     * @param surroundings everything that stands there
     * @param terrain      models of the terrain in the same frame
     * @param refraction   coefficient of refraction, as in {@link Curvature#dropM}
     * @param surveyed     whether a survey reaches over the whole sector, so that what is entered is all that stands there
     */
    public static BeamView of(FramePoint lens, ProtectionSurface sector, Surroundings surroundings, List<TerrainField> terrain,
            double refraction, boolean surveyed) {
        Surroundings standing = new Surroundings(surroundings.obstacles(),
                surroundings.blocks().stream().filter(block -> !TerrainField.isTerrain(block.block())).toList(), List.of());
        SurfaceComparison compared = standing.compareSight(sector, refraction);
        Optional<ObstacleComparison> other = compared.governing();
        Optional<Highest> highest = Optional.empty();
        for (TerrainField each : terrain) {
            highest = worse(highest, highest(each, lens, sector, refraction));
        }
        double known = knownToM(terrain, sector);
        boolean hidden = other.filter(found -> found.marginM() < 0).isPresent() || highest.filter(found -> found.aboveM() > 0).isPresent();
        boolean complete = surveyed && compared.uncompared().isEmpty() && surroundings.uncompared().isEmpty();
        State state = hidden ? State.HIDDEN : known < sector.lengthM() || !complete ? State.NOT_EVALUATED
                : highest.filter(found -> found.atMostM() > 0).isPresent() ? State.NOT_TOLD : State.SEEN;
        return new BeamView(state, highest, other, known, surveyed);
    }

    /** What stands above the line counts before what may; of both the greater. */
    private static Optional<Highest> worse(Optional<Highest> one, Optional<Highest> other) {
        if (one.isEmpty() || other.isEmpty()) {
            return one.or(() -> other);
        }
        double share = Math.max(one.get().aboveM(), other.get().aboveM());
        double most = Math.max(one.get().atMostM(), other.get().atMostM());
        FramePoint place = one.get().aboveM() >= other.get().aboveM() ? one.get().place() : other.get().place();
        return Optional.of(new Highest(place, share, most));
    }

    private static Optional<Highest> highest(TerrainField terrain, FramePoint lens, ProtectionSurface sector, double refraction) {
        double[] along = terrain.places().alongM();
        double[] right = terrain.places().rightM();
        double[] height = terrain.places().heightM();
        double rise = Angles.tanDeg(sector.slopeDeg());
        double reach = terrain.reachM();
        int worst = -1;
        double above = Double.NEGATIVE_INFINITY;
        double atMost = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < along.length; i++) {
            double outward = sector.outwardM(along[i], right[i]);
            double offset = Math.abs(sector.offsetM(along[i], right[i]));
            boolean touches = outward >= -reach && outward <= sector.lengthM() + reach
                    && offset <= sector.halfWidthM(outward + reach) + reach;
            if (touches) {
                double nearest = Math.max(0, outward - reach);
                atMost = Math.max(atMost, height[i] + terrain.verticalAccuracyM() - lens.heightM() - nearest * rise
                        - Curvature.dropM(nearest, refraction));
            }
            if (outward > 0 && outward <= sector.lengthM() && offset <= sector.halfWidthM(outward)) {
                double found = height[i] - lens.heightM() - outward * rise - Curvature.dropM(outward, refraction);
                if (found > above) {
                    above = found;
                    worst = i;
                }
            }
        }
        return worst < 0 ? Optional.empty()
                : Optional.of(new Highest(new FramePoint(along[worst], right[worst], height[worst]), above, atMost));
    }

    /** Walks outward until a place of the sector lies under no model. */
    private static double knownToM(List<TerrainField> terrain, ProtectionSurface sector) {
        if (terrain.isEmpty()) {
            return 0;
        }
        double step = Math.max(LEAST_STEP_M, terrain.stream().mapToDouble(TerrainField::reachM).min().orElseThrow());
        for (double outward = 0; outward < sector.lengthM() + step; outward += step) {
            double at = Math.min(outward, sector.lengthM());
            double half = sector.halfWidthM(at);
            int parts = (int) Math.ceil(half / step);
            for (int i = -parts; i <= parts; i++) {
                FramePoint place = sector.pointAt(at, parts == 0 ? 0 : half * i / parts);
                if (terrain.stream().noneMatch(each -> each.isKnown(place))) {
                    return Math.max(0, at - step);
                }
            }
        }
        return sector.lengthM();
    }
}
