package slopewright.checks.internal.light;

import java.util.List;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Stop;
import slopewright.checks.internal.Worst;
import slopewright.messages.Message;
import slopewright.messages.Notation;
import slopewright.messages.Words;
import slopewright.model.Stage;
import slopewright.siting.Colour;
import slopewright.siting.ElementNames;
import slopewright.siting.Trait;
import slopewright.standards.CitedValue;

/**
 * White is stronger than red by a bounded factor. A failure: outside the bounds one colour drowns the other of the neighbouring unit, and
 * the pilot reads another pattern. White above the setting is compared with red as far below it.
 */
public final class WhiteToRedRule extends AidRule {
    /** Made by the service loader. */
    public WhiteToRedRule() {
        super("LIGHT-02", Severity.FAIL, Trait.ROW);
    }

    private record Pair(MeasuredLight white, MeasuredLight red) {

        double times() {
            return white.intensityCd() / red.intensityCd();
        }
    }

    @Override
    public Stage stage() {
        return Stage.SET_UP;
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        CitedValue from = facts.value("white-to-red-from-times");
        CitedValue to = facts.value("white-to-red-to-times");
        List<MeasuredLight> lights = MeasuredLight.of(facts);
        List<Pair> pairs = lights.stream().filter(light -> light.colour() == Colour.WHITE)
                .flatMap(white -> lights.stream().filter(light -> light.colour() == Colour.RED && light.isOpposite(white))
                        .filter(red -> red.intensityCd() > 0).map(red -> new Pair(white, red))).toList();
        if (pairs.isEmpty()) {
            throw Stop.missing(Message.of("missing.white-and-red", ElementNames.of(facts.aid().getEquipment())));
        }
        Worst<Pair> worst = Worst.of(pairs, pair -> Measure.between(pair.times(), from.value(), to.value(), "\u00d7"));
        Pair pair = worst.item();
        outcomes.about(facts.aid()).measured(worst.measure()).resting(from, to)
                .saying("compared", pair.white().name(), Words.quantity(pair.white().intensityCd(), Notation.CANDELA),
                        Words.number(pair.times()), Words.quantity(pair.red().intensityCd(), Notation.CANDELA), Words.number(from.value()),
                        Words.number(to.value()))
                .advising("choose").add();
    }
}
