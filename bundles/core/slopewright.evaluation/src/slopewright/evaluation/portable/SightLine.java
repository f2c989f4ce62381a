package slopewright.evaluation.portable;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

import slopewright.evaluation.obstacles.ObstacleComparison;
import slopewright.evaluation.obstacles.SurfaceComparison;
import slopewright.evaluation.obstacles.Surroundings;
import slopewright.geometry.Angles;
import slopewright.geometry.Curvature;
import slopewright.geometry.FramePoint;
import slopewright.geometry.ProtectionSurface;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.standards.Citation;

/**
 * A line from a lens outward over which nothing may stand. The margin above a sight line is no margin of an obstacle surface.
 *
 * @param kind           what it is
 * @param unit           name of the unit from whose lens it starts
 * @param angleDeg       its elevation as the unit is set, decimal degrees
 * @param lowestAngleDeg its elevation when the unit is off by its whole allowance for setting and tilt, decimal degrees
 * @param asSet          everything that stands there against the line as the unit is set
 * @param lowest         everything against the lowest line
 * @param citations      where the angle comes from
 */
public record SightLine(Kind kind, String unit, double angleDeg, double lowestAngleDeg, SurfaceComparison asSet, SurfaceComparison lowest,
        List<Citation> citations) {

    /** What a line is. */
    public enum Kind {
        /** The lower edge of the red sector: a line of sight, so that the curvature of the Earth and refraction count. */
        RED_EDGE,
        /** The published margin below the lowest on-slope signal: a rule, so that elevations are compared without curvature. */
        MARGIN;

        /** Returns the word used in output. */
        public String key() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }

        /** Returns what it is, for people. */
        public Message message() {
            return Message.of(this == RED_EDGE ? "sight.red-edge" : "sight.margin");
        }

        /** Returns whether curvature and refraction count. */
        public boolean isCurved() {
            return this == RED_EDGE;
        }
    }

    /**
     * The sector that a line sweeps.
     *
     * @param lens        the lens
     * @param axisTurnDeg turn of the axis, decimal degrees, clockwise seen from above
     * @param halfDeg     half the width of the sector, decimal degrees
     * @param rangeM      how far it reaches, metres
     */
    public record Sector(FramePoint lens, double axisTurnDeg, double halfDeg, double rangeM) {

        private ProtectionSurface plane(double angleDeg) {
            return new ProtectionSurface(lens.alongM(), lens.rightM(), lens.heightM(), 0, Angles.tanDeg(halfDeg), rangeM, angleDeg,
                    axisTurnDeg);
        }
    }

    /**
     * A line before anything is compared with it.
     *
     * @param kind           what it is
     * @param unit           name of the unit from whose lens it starts
     * @param angleDeg       its elevation as the unit is set, decimal degrees
     * @param lowestAngleDeg its elevation when the unit is off by its whole allowance, decimal degrees
     * @param sector         the sector that it sweeps
     * @param citations      where the angle comes from
     */
    public record Drawn(Kind kind, String unit, double angleDeg, double lowestAngleDeg, Sector sector, List<Citation> citations) {

        /** Copies the citations. */
        public Drawn {
            Objects.requireNonNull(kind);
            Objects.requireNonNull(unit);
            Objects.requireNonNull(sector);
            citations = List.copyOf(citations);
        }

        /** Returns the plane that the lowest line sweeps, without curvature. */
        public ProtectionSurface lowest() {
            return sector.plane(lowestAngleDeg);
        }

        /** Compares the line with everything that stands there. */
        public SightLine compare(Surroundings surroundings) {
            return new SightLine(kind, unit, angleDeg, lowestAngleDeg, compare(surroundings, sector.plane(angleDeg)),
                    compare(surroundings, lowest()), citations);
        }

        private SurfaceComparison compare(Surroundings surroundings, ProtectionSurface plane) {
            return kind.isCurved() ? surroundings.compareSight(plane, Curvature.USUAL_REFRACTION) : surroundings.compare(plane);
        }
    }

    /** Copies the citations. */
    public SightLine {
        Objects.requireNonNull(kind);
        Objects.requireNonNull(unit);
        Objects.requireNonNull(asSet);
        Objects.requireNonNull(lowest);
        citations = List.copyOf(citations);
    }

    /** Returns the obstacle or survey point that stands highest against the lowest line; empty where none is in the sector. */
    public Optional<ObstacleComparison> governing() {
        return lowest.governing();
    }

    /** Returns the name of the governing obstacle; empty where there is none. */
    public String obstacle() {
        return governing().map(ObstacleComparison::label).orElse("");
    }

    /** Returns the height of the line as set over the worst obstacle, metres, negative where it stands through; empty where none is. */
    public OptionalDouble marginM() {
        return asSet.marginM();
    }

    /** Returns the height of the lowest line over the worst obstacle, metres, negative where it stands through; empty where none is. */
    public OptionalDouble lowestMarginM() {
        return lowest.marginM();
    }

    /** Returns the margin as set as an angle at the lens, decimal degrees; empty where no obstacle is in the sector. */
    public OptionalDouble marginDeg() {
        if (asSet.governing().isEmpty()) {
            return OptionalDouble.empty();
        }
        FramePoint worst = asSet.governing().get().worst().point();
        double distance = Math.max(0, asSet.surface().outwardM(worst.alongM(), worst.rightM()));
        return OptionalDouble.of(angleDeg
                - Angles.elevationDeg(distance * Angles.tanDeg(angleDeg) - asSet.governing().get().marginM(), distance));
    }

    /** Returns whether something stands through the lowest line. */
    public boolean isBlocked() {
        return lowest.marginM().isPresent() && lowest.marginM().getAsDouble() < 0;
    }

    /** Returns whether the lowest line points into the ground. */
    public boolean isBelowHorizon() {
        return lowestAngleDeg < 0;
    }

    /**
     * Returns whether something was surveyed and all of it compared, nothing stands through the lowest line and it is above the horizon.
     */
    public boolean isClear() {
        return lowest.isComplete() && !isBlocked() && !isBelowHorizon();
    }

    /** Returns what the line says of curvature and refraction. */
    public Message curvature() {
        return kind.isCurved() ? Message.of("sight.curved", Words.number(Curvature.USUAL_REFRACTION)) : Message.of("sight.not-curved");
    }
}
