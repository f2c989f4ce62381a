package slopewright.siting;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

import slopewright.geometry.FramePoint;
import slopewright.messages.Message;
import slopewright.standards.Citation;

/**
 * A solved layout of one indicator. Lengths in metres in the frame of the runway end or helipad, angles in decimal degrees.
 *
 * @param family           key of the family
 * @param ruleSet          key of the rule set
 * @param edition          key of its edition
 * @param slopeDeg         the approach slope
 * @param distanceM        threshold or hover point to the row, the wing bar or the near bar
 * @param unshifted        the distance before any shift that cures a penetration
 * @param lowestOnSlopeDeg the angle used for the eye height, after any allowance
 * @param mehtM            minimum eye height over the threshold (MEHT): the least on-slope eye height of the pattern there, by the unit
 *                         that bounds it; over the hover point at a helipad
 * @param nominalEyeHeightM eye height there on the slope itself, where the family or the place has one beside the MEHT
 * @param wheelClearanceM  wheel height over the threshold on that angle; empty where no aeroplane was given
 * @param reference        the siting's reference point: the lens on the centre line at the distance
 * @param ground           from what the height of the lenses follows
 * @param units            the units from the runway outward, near bar first
 * @param surface          the obstacle surface; empty where there is none
 * @param noSurface        why there is no obstacle surface; empty where there is one
 * @param level            how a level difference was solved; empty where the distance was given
 * @param notes            what a reader must know
 * @param citations        where every number that was used comes from
 */
public record Siting(String family, String ruleSet, String edition, double slopeDeg, double distanceM, UnshiftedDistance unshifted,
        double lowestOnSlopeDeg, double mehtM, OptionalDouble nominalEyeHeightM, OptionalDouble wheelClearanceM, FramePoint reference,
        GroundSource ground, List<UnitPlan> units, Optional<SurfacePlan> surface, Optional<Message> noSurface,
                Optional<LevelSolution> level, List<Message> notes, List<CitedUse> citations) {

    /**
     * One number that was used.
     *
     * @param name     what it is
     * @param value    the number
     * @param unit     its unit
     * @param citation where it comes from
     * @param isSector whether it places the edge of a sector, so that those of the unit in hand stand in for it
     */
    public record CitedUse(String name, double value, String unit, Citation citation, boolean isSector) {

        /** Makes one that places no edge of a sector. */
        public CitedUse(String name, double value, String unit, Citation citation) {
            this(name, value, unit, citation, false);
        }

        /** Spelled out: what a record has by itself is written anew at every start. */
        @Override
        public boolean equals(Object other) {
            return other instanceof CitedUse that && name.equals(that.name) && Double.compare(value, that.value) == 0
                    && unit.equals(that.unit) && citation.equals(that.citation) && isSector == that.isSector;
        }

        @Override
        public int hashCode() {
            int hash = name.hashCode();
            hash = 31 * hash + Double.hashCode(value);
            hash = 31 * hash + unit.hashCode();
            hash = 31 * hash + citation.hashCode();
            return 31 * hash + Boolean.hashCode(isSector);
        }
    }

    /** Copies the lists. */
    public Siting {
        Objects.requireNonNull(unshifted);
        Objects.requireNonNull(ground);
        Objects.requireNonNull(surface);
        Objects.requireNonNull(noSurface);
        Objects.requireNonNull(nominalEyeHeightM);
        units = List.copyOf(units);
        notes = List.copyOf(notes);
        citations = List.copyOf(citations);
    }

    /** Returns the citations that still need a person's confirmation. */
    public List<Citation> toConfirm() {
        return citations.stream().map(CitedUse::citation).filter(Citation::toConfirm).distinct().toList();
    }
}
