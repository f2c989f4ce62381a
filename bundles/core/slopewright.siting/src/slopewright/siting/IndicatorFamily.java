package slopewright.siting;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import slopewright.geometry.FramePoint;
import slopewright.messages.Message;
import slopewright.standards.RuleSet;

/**
 * One family of indicators: how it is laid out and what its lights tell. Implementations are found through {@link Families}; they
 * hold no state.
 */
public interface IndicatorFamily {

    /** What a pilot looks at. */
    enum DisplayForm {
        /** Lights. */
        LIGHTS,
        /** Unlit panels. */
        PANELS
    }

    /** Returns the key, in files and on the command line. */
    String key();

    /**
     * Returns the family whose values of a rule set it takes: its own key, or that of another family of which it is a variant.
     */
    default String ruleKey() {
        return key();
    }

    /** Returns what it has in common with other families, by which rules tell whether they have something to say about it. */
    Set<Trait> traits();

    /** Returns whether it has a trait. */
    default boolean has(Trait trait) {
        return traits().contains(trait);
    }

    /** Returns the names of its bars one behind the other, near to far, as in the keys of rule sets; empty where it has none. */
    default List<String> bars() {
        return List.of();
    }

    /** Returns the trade name. */
    String name();

    /** Returns the numbers of units it comes in, the usual one first. */
    List<Integer> unitCounts();

    /** Returns what a pilot looks at. */
    default DisplayForm displayForm() {
        return DisplayForm.LIGHTS;
    }

    /** Returns whether it may stand at a runway end. */
    default boolean atRunways() {
        return true;
    }

    /** Returns whether it may stand at a helipad. */
    default boolean atHelipads() {
        return false;
    }

    /** Returns whether bars of units stand one behind the other, so that their distances and settings can be given. */
    default boolean hasBars() {
        return !bars().isEmpty();
    }

    /** Returns whether the bar of a unit says what it shows and when, so that without its number nobody knows what is meant. */
    default boolean tellsBarsApart() {
        return has(Trait.BARS) || has(Trait.LEGS) || has(Trait.PANELS);
    }

    /**
     * Lays the indicator out.
     *
     * @param request what the layout starts from
     * @param rules   a rule set that covers the family
     * @return the layout
     * @throws SitingException where an input is missing or no layout fits; the message says which and why
     */
    Siting site(SitingRequest request, RuleSet rules);

    /**
     * Works out what a layout that stands already gives: the same quantities as {@link #site}, from the units as they are.
     *
     * @param request   what the layout was meant to start from
     * @param rules     a rule set that covers the family
     * @param units     the units as they stand, in any order, at least one
     * @param unshifted the distance before any shift that cures a penetration
     * @return the layout
     * @throws SitingException where an input is missing or the units are none of this family
     */
    Siting assess(SitingRequest request, RuleSet rules, List<UnitPlan> units, UnshiftedDistance unshifted);

    /**
     * Tells what a pattern means.
     *
     * @param seen the units from the runway outward, near bar first
     * @return the meaning for each path by name; the empty name where there is one path
     */
    Map<String, Meaning> meanings(List<SeenUnit> seen);

    /**
     * Returns what each unit shows to an eye.
     *
     * @param units the units from the runway outward, near bar first
     * @param eye   the eye in the same frame
     * @return one entry a unit, in the same order
     */
    default List<SeenUnit> look(List<UnitPlan> units, FramePoint eye) {
        return Signals.lights(units, eye);
    }

    /**
     * Finds what bounds the on-slope signal from below over the threshold or the hover point.
     *
     * @param units        the units in any order
     * @param allowanceDeg taken off the angle of the edge that bounds it, decimal degrees
     * @return the bound, empty where nothing reads on slope there
     */
    default Optional<OnSlopeBound> lowestOnSlope(List<UnitPlan> units, double allowanceDeg) {
        return Signals.lowestOnSlope(this, units, allowanceDeg);
    }

    /** Returns what a reader of a pattern must know, such as a colour that two sectors share. */
    default List<Message> remarks(List<SeenUnit> seen) {
        return List.of();
    }
}
