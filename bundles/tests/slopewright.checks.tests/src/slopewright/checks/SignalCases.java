package slopewright.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

import slopewright.model.LightColour;
import slopewright.model.LightState;
import slopewright.model.LightUnit;
import slopewright.model.SlopewrightFactory;
import slopewright.model.Transition;

/**
 * Cases of the rules about what each unit shows. The order of colours of each family is that of the sources which the families name; facts
 * of the trade: a row shows red below and white above, tri-colour red, green, amber from below, and so on. A change is at most 3' wide for
 * rows (RD 862/2009, 5.3.5.29) and 15' for T forms (5.3.5.13).
 */
final class SignalCases {
    private static final Map<String, Supplier<Sample>> LIT = Map.of("row", Bases::row, "two units", Bases::pairCodeTwo, "T form",
            Bases::tForm, "two bars", Bases::twoBar, "three bars", Bases::threeBar, "tri-colour", Bases::triColour, "row at a pad",
            Bases::padRow, "sector unit", Bases::padSector, "pair", Bases::padPair, "US row", Bases::usRow);

    private SignalCases() {
    }

    static List<RuleCase> all() {
        List<RuleCase> cases = new ArrayList<>();
        LIT.keySet().stream().sorted().forEach(name -> family(cases, name, LIT.get(name)));
        cases.add(RuleCase.of("SIG-01", Result.PASS, "panels show no light", Bases::panels, Sample::unchanged));
        cases.add(RuleCase.of("SIG-01", Result.FAIL, "a panel with a light", Bases::panels,
                sample -> sample.aid().getUnits().get(0).getTransitions().add(whiteOverRed())));
        // Each box of the pair is green for 2 degrees: one that is set 2 degrees too low is white where the other begins to be green.
        cases.add(RuleCase.of("SIG-01", Result.FAIL, "one of a pair 2 degrees too low", Bases::padPair,
                sample -> sample.unit(0).setSettingDeg(sample.unit(0).getSettingDeg() - 2)));
        cases.add(RuleCase.of("SIG-01", Result.NOT_EVALUATED, "no angle of a change", Bases::row,
                sample -> first(sample).setOffsetDeg(null)));
        cases.add(RuleCase.of("SIG-01", Result.FAIL, "pulsating in a row", Bases::row,
                sample -> first(sample).setAboveState(LightState.PULSATING)));
        cases.add(RuleCase.of("SIG-02", Result.PASS, "3'", Bases::row, Sample::unchanged));
        cases.add(RuleCase.of("SIG-02", Result.FAIL, "3.1'", Bases::row, sample -> first(sample).setWidthMinutes(3.1)));
        cases.add(RuleCase.of("SIG-02", Result.FAIL, "a negative width", Bases::row, sample -> first(sample).setWidthMinutes(-3.0)));
        cases.add(RuleCase.of("SIG-02", Result.FAIL, "sharper than the equipment", Bases::row, sample -> {
            sample.aid().getEquipment().setTransitionMinutes(3.0);
            first(sample).setWidthMinutes(2.5);
        }));
        cases.add(RuleCase.of("SIG-02", Result.NOT_EVALUATED, "no width", Bases::row, sample -> first(sample).setWidthMinutes(null)));
        cases.add(RuleCase.of("SIG-02", Result.PASS, "15' of a T form", Bases::tForm, Sample::unchanged));
        cases.add(RuleCase.of("SIG-02", Result.FAIL, "15.1' of a T form", Bases::tForm, sample -> first(sample).setWidthMinutes(15.1)));
        cases.add(RuleCase.of("SIG-02", Result.NOT_APPLICABLE, "panels have no change", Bases::panels, Sample::unchanged));
        return cases;
    }

    private static void family(List<RuleCase> cases, String name, Supplier<Sample> base) {
        cases.add(RuleCase.of("SIG-01", Result.PASS, name + " as laid out", base, Sample::unchanged));
        cases.add(RuleCase.of("SIG-01", Result.FAIL, name + " upside down", base, sample -> units(sample).forEach(SignalCases::turnOver)));
        for (LightColour colour : List.of(LightColour.RED, LightColour.GREEN, LightColour.WHITE, LightColour.NONE)) {
            cases.add(RuleCase.of("SIG-01", Result.FAIL, name + " all " + colour, base,
                    sample -> units(sample).forEach(unit -> unit.getTransitions().forEach(edge -> paint(edge, colour)))));
        }
        cases.add(RuleCase.of("SIG-01", Result.FAIL, name + " without sectors", base,
                sample -> sample.aid().getUnits().get(0).getTransitions().clear()));
        cases.add(RuleCase.of("SIG-01", Result.FAIL, name + " with an edge twice", base, sample -> {
            Transition twin = SlopewrightFactory.eINSTANCE.createTransition();
            Transition last = last(sample);
            twin.setOffsetDeg(last.getOffsetDeg());
            twin.setWidthMinutes(last.getWidthMinutes());
            twin.setBelowColour(last.getBelowColour());
            twin.setBelowState(last.getBelowState());
            twin.setAboveColour(last.getAboveColour());
            twin.setAboveState(last.getAboveState());
            sample.aid().getUnits().get(0).getTransitions().add(twin);
        }));
    }

    private static List<LightUnit> units(Sample sample) {
        return sample.aid().getUnits();
    }

    private static Transition first(Sample sample) {
        return sample.aid().getUnits().get(0).getTransitions().get(0);
    }

    private static Transition last(Sample sample) {
        List<Transition> edges = sample.aid().getUnits().get(0).getTransitions();
        return edges.get(edges.size() - 1);
    }

    private static void paint(Transition edge, LightColour colour) {
        LightState state = colour == LightColour.NONE ? LightState.OFF : LightState.STEADY;
        edge.setBelowColour(colour);
        edge.setAboveColour(colour);
        edge.setBelowState(state);
        edge.setAboveState(state);
    }

    /** Exchanges what is below with what is above, from the top edge to the bottom edge. */
    private static void turnOver(LightUnit unit) {
        List<Transition> edges = unit.getTransitions();
        List<LightColour> colours = new ArrayList<>();
        List<LightState> states = new ArrayList<>();
        for (Transition edge : edges) {
            colours.add(0, edge.getBelowColour());
            states.add(0, edge.getBelowState());
        }
        colours.add(0, edges.get(edges.size() - 1).getAboveColour());
        states.add(0, edges.get(edges.size() - 1).getAboveState());
        for (int i = 0; i < edges.size(); i++) {
            edges.get(i).setBelowColour(colours.get(i));
            edges.get(i).setBelowState(states.get(i));
            edges.get(i).setAboveColour(colours.get(i + 1));
            edges.get(i).setAboveState(states.get(i + 1));
        }
    }

    private static Transition whiteOverRed() {
        Transition edge = SlopewrightFactory.eINSTANCE.createTransition();
        edge.setOffsetDeg(0.0);
        edge.setWidthMinutes(3.0);
        edge.setBelowColour(LightColour.RED);
        edge.setAboveColour(LightColour.WHITE);
        return edge;
    }
}
