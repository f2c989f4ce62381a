package slopewright.checks.internal.light;

import java.util.List;
import java.util.Optional;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Stop;
import slopewright.messages.Message;
import slopewright.messages.Notation;
import slopewright.messages.Words;
import slopewright.model.Stage;
import slopewright.siting.ElementNames;
import slopewright.siting.Siting;
import slopewright.siting.range.LightCondition;
import slopewright.siting.range.PrintedLight;
import slopewright.standards.Citation;
import slopewright.standards.CitedValue;

/**
 * The equipment is as strong in every direction as the contours ask. A failure: too weak a light shows the pilot another pattern off the
 * axis than on it. It passes only where the measurements reach to the ends of every contour.
 */
public final class IntensityTableRule extends AidRule {
    /** Made by the service loader. */
    public IntensityTableRule() {
        super("LIGHT-01", Severity.FAIL);
    }

    /** A measurement with what is asked of it. */
    private record Compared(MeasuredLight light, Measure measure, List<Citation> citations) {
    }

    @Override
    public Stage stage() {
        return Stage.SET_UP;
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        List<MeasuredLight.Direction> asked = MeasuredLight.asked(facts);
        if (asked.isEmpty()) {
            throw Stop.notApplicable(Message.of("light.no-contours", facts.rules().descriptor().name(), Words.name(facts.rules().edition()),
                    facts.familyName()));
        }
        List<MeasuredLight> lights = MeasuredLight.of(facts);
        List<Compared> compared = lights.stream().flatMap(light -> compare(facts, light).stream()).toList();
        List<MeasuredLight.Direction> open = asked.stream().filter(direction -> lights.stream().noneMatch(direction::isTold)).toList();
        Optional<Compared> worst = compared.stream().min((one, other) -> Double.compare(share(one), share(other)));
        if (!open.isEmpty() && worst.filter(comparison -> !comparison.measure().isMet()).isEmpty()) {
            outcomes.notEvaluated(facts.aid(), open.stream().map(MeasuredLight.Direction::name).toList(),
                    Message.of("LIGHT-01.open", ElementNames.of(facts.aid().getEquipment()), Words.count(open.size()),
                            Words.count(asked.size()), open.get(0).name()));
            return;
        }
        Compared weakest = worst.orElseThrow();
        Optional<CitedValue> dark = MeasuredLight.darkEdge(facts);
        outcomes.about(facts.aid()).measured(weakest.measure()).citing(weakest.citations())
                .resting(dark.stream().toArray(CitedValue[]::new))
                .saying(dark.isPresent() ? "compared-to-edge" : "compared", ElementNames.of(facts.aid().getEquipment()),
                        Words.quantity(weakest.light().intensityCd(), Notation.CANDELA), weakest.light().name(),
                        Words.quantity(weakest.measure().limit(), Notation.CANDELA), Words.count(compared.size()))
                .advising("stronger").add();
    }

    private static double share(Compared light) {
        return light.light().intensityCd() / light.measure().limit();
    }

    private static Optional<Compared> compare(AidFacts facts, MeasuredLight light) {
        Optional<PrintedLight> printed = PrintedLight.of(facts.indicator(), facts.rules(), light.colour(), LightCondition.DAY, true);
        return printed.flatMap(table -> {
            var least = table.intensityCd(light.azimuthDeg(), light.elevationDeg());
            return least.isEmpty() ? Optional.empty()
                    : Optional.of(new Compared(light, Measure.atLeast(light.intensityCd(), least.getAsDouble(), "cd"),
                            table.uses().stream().map(Siting.CitedUse::citation).toList()));
        });
    }
}
