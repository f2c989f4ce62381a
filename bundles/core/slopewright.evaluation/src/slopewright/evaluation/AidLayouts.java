package slopewright.evaluation;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

import slopewright.geometry.FramePoint;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachHost;
import slopewright.model.Helipad;
import slopewright.model.LightColour;
import slopewright.model.LightState;
import slopewright.model.LightUnit;
import slopewright.model.RunwayEnd;
import slopewright.model.SlopewrightFactory;
import slopewright.model.Transition;
import slopewright.model.util.Projects;
import slopewright.siting.Colour;
import slopewright.siting.ElementNames;
import slopewright.siting.Families;
import slopewright.siting.IndicatorFamily;
import slopewright.siting.Light;
import slopewright.siting.LightForm;
import slopewright.siting.SectorEdge;
import slopewright.siting.Siting;
import slopewright.siting.SitingException;
import slopewright.siting.SitingRequest;
import slopewright.siting.UnitPlan;
import slopewright.siting.UnshiftedDistance;
import slopewright.standards.RuleSet;

/** Reads the layout of an approach aid from the model, and makes model units of a solved layout. */
public final class AidLayouts {

    private AidLayouts() {
    }

    /**
     * Returns the elevation from which heights in the frame count: that of the threshold or of the TLOF.
     *
     * @param host the runway end or approach direction
     * @return metres in the vertical datum of the aerodrome, empty where it is not known
     */
    public static Optional<Double> datumM(ApproachHost host) {
        if (host instanceof RunwayEnd end) {
            return Optional.ofNullable(end.getThresholdElevationM());
        }
        return Projects.helipad(host).map(Helipad::getElevationM);
    }

    /**
     * Returns the units of an aid as they stand in the model.
     *
     * @param aid an aid
     * @return units that have a place, a lens elevation and a setting, in document order
     * @throws SitingException where the datum is not known, a unit lacks a number, or two units have one name, so that nobody can tell
     * whose
     *                         measured angle or whose place is meant; the message names it
     */
    public static List<UnitPlan> units(ApproachAid aid) {
        ApproachHost host = AidRequests.host(aid);
        double datum = datumM(host).orElseThrow(() -> new SitingException(Message.of("evaluation.refused.no-elevation",
                ElementNames.of(host))));
        double turn = aid.getAxisTurnDeg() == null ? 0 : aid.getAxisTurnDeg();
        List<UnitPlan> units = new ArrayList<>();
        Set<String> names = new HashSet<>();
        for (LightUnit unit : aid.getUnits()) {
            UnitPlan plan = plan(unit, datum, turn);
            if (!names.add(plan.id())) {
                throw new SitingException(Message.of("evaluation.refused.unit-named-twice", Words.name(plan.id()),
                        ElementNames.way(aid)));
            }
            units.add(plan);
        }
        return units;
    }

    private static UnitPlan plan(LightUnit unit, double datumM, double turnDeg) {
        FramePoint place = new FramePoint(need(unit, unit.getAlongM(), "along"), need(unit, unit.getRightM(), "right"),
                need(unit, unit.getLensElevationM(), "lens-elevation") - datumM);
        double setting = need(unit, unit.getSettingDeg(), "setting");
        double azimuth = turnDeg + (unit.getAzimuthOffsetDeg() == null ? 0 : unit.getAzimuthOffsetDeg());
        List<SectorEdge> edges = unit.getTransitions().stream().map(transition -> edge(unit, transition, setting)).toList();
        int bar = bar(unit).orElseThrow(() -> without(unit, "bar"));
        String label = unit.getLabel() == null ? String.valueOf(unit.getId()) : unit.getLabel();
        try {
            return new UnitPlan(label, bar, place, setting, azimuth, edges);
        } catch (IllegalArgumentException e) {
            throw new SitingException(Message.of("evaluation.refused.sectors", ElementNames.way(unit)));
        }
    }

    /**
     * Returns the number of the bar of a unit; that of the only one where none was entered and the family has no others, and empty where it
     * has.
     */
    public static OptionalInt bar(LightUnit unit) {
        if (unit.getBar() != null) {
            return OptionalInt.of(unit.getBar());
        }
        boolean matters = unit.eContainer() instanceof ApproachAid aid
                && Families.find(aid.getFamilyKey()).filter(IndicatorFamily::tellsBarsApart).isPresent();
        return matters ? OptionalInt.empty() : OptionalInt.of(1);
    }

    private static SitingException without(LightUnit unit, String what) {
        return new SitingException(Message.of("evaluation.refused.unit-without", Words.term("unit." + what), ElementNames.way(unit)));
    }

    private static double need(LightUnit unit, Double number, String what) {
        if (number == null) {
            throw without(unit, what);
        }
        return number;
    }

    private static SectorEdge edge(LightUnit unit, Transition transition, double settingDeg) {
        double offset = need(unit, transition.getOffsetDeg(), "transition");
        double width = transition.getWidthMinutes() == null ? 0 : transition.getWidthMinutes();
        return new SectorEdge(settingDeg + offset, width, light(transition.getBelowColour(), transition.getBelowState()),
                light(transition.getAboveColour(), transition.getAboveState()));
    }

    private static Light light(LightColour colour, LightState state) {
        return new Light(Colour.valueOf(colour.getName()), LightForm.valueOf(state.getName()));
    }

    /**
     * Returns the siting that the units of an aid give as they stand.
     *
     * @param aid   an aid with units
     * @param rules a rule set
     * @return the siting
     * @throws SitingException where the family is unknown or not covered, or something is missing; the message says what
     */
    public static Siting evaluate(ApproachAid aid, RuleSet rules) {
        return evaluate(aid, Families.get(String.valueOf(aid.getFamilyKey())), rules);
    }

    static Siting evaluate(ApproachAid aid, IndicatorFamily family, RuleSet rules) {
        if (!rules.covers(family.ruleKey())) {
            throw Families.notCovered(family, rules);
        }
        List<UnitPlan> units = units(aid);
        if (units.isEmpty()) {
            throw new SitingException(Message.of("evaluation.refused.no-units"));
        }
        SitingRequest request = AidRequests.of(aid);
        double standsM = family.assess(request, rules, units, UnshiftedDistance.unknown(Message.of("siting.no-surface"))).distanceM();
        return family.assess(request, rules, units, UnshiftedDistance.of(unshiftedM(aid, standsM)));
    }

    /**
     * Returns the distance before any shift that cures a penetration: the one that was entered with a reason, and else that at which the
     * aid stands, for nobody said that it was moved. A shift leads away from the threshold, so none was farther from it before.
     */
    private static double unshiftedM(ApproachAid aid, double standsM) {
        String reason = aid.getUnshiftedDistanceReason();
        boolean entered = aid.getUnshiftedDistanceM() != null && reason != null && !reason.isBlank();
        return entered ? Math.min(aid.getUnshiftedDistanceM(), standsM) : standsM;
    }

    /**
     * Makes model units of a solved layout.
     *
     * @param siting the layout
     * @param datumM elevation of the threshold or TLOF, metres
     * @return new units without ids, in the order of the layout
     */
    public static List<LightUnit> toModel(Siting siting, double datumM) {
        return siting.units().stream().map(unit -> toModel(unit, datumM)).toList();
    }

    private static LightUnit toModel(UnitPlan plan, double datumM) {
        LightUnit unit = SlopewrightFactory.eINSTANCE.createLightUnit();
        unit.setLabel(plan.id());
        unit.setBar(plan.bar());
        unit.setAlongM(rounded(plan.place().alongM(), 1000));
        unit.setRightM(rounded(plan.place().rightM(), 1000));
        unit.setLensElevationM(rounded(datumM + plan.place().heightM(), 1000));
        unit.setSettingDeg(rounded(plan.settingDeg(), 1e6));
        unit.setAzimuthOffsetDeg(0.0);
        for (SectorEdge edge : plan.edges()) {
            Transition transition = SlopewrightFactory.eINSTANCE.createTransition();
            transition.setOffsetDeg(rounded(edge.angleDeg() - plan.settingDeg(), 1e6));
            transition.setWidthMinutes(edge.widthMinutes());
            transition.setBelowColour(LightColour.valueOf(edge.below().colour().name()));
            transition.setBelowState(LightState.valueOf(edge.below().form().name()));
            transition.setAboveColour(LightColour.valueOf(edge.above().colour().name()));
            transition.setAboveState(LightState.valueOf(edge.above().form().name()));
            unit.getTransitions().add(transition);
        }
        return unit;
    }

    /** Rounds to what a field party can set out: millimetres, and millionths of a degree. */
    private static double rounded(double value, double steps) {
        return Math.round(value * steps) / steps;
    }
}
