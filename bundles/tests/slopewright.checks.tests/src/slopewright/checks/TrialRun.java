package slopewright.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import slopewright.messages.Message;
import slopewright.model.AidSide;
import slopewright.siting.Families;
import slopewright.standards.Citation;

/** What is done with a variant of the row of four that was registered as a service and nowhere else: it is checked like the row itself. */
public final class TrialRun implements Runnable {
    private static final String ROW = "four-unit-row";

    /** What an outcome says but for the name of the family. */
    private record Said(String rule, String element, Result result, Severity severity, List<Object> measure, boolean toConfirm,
            List<String> citations, List<String> sentences) {

        static Said of(Outcome outcome) {
            return new Said(outcome.rule(), outcome.elementPath().english(), outcome.result(), outcome.severity(),
                    List.of(outcome.value(), outcome.limit(), outcome.margin(), outcome.unit()), outcome.toConfirm(),
                    outcome.citations().stream().map(Citation::key).toList(),
                    Stream.of(List.of(outcome.message()), outcome.missing(), outcome.steps())
                            .flatMap(List::stream).map(Message::key).toList());
        }
    }

    @Override
    public void run() {
        assertTrue(Families.find(TrialRow.KEY).isPresent(), "it is registered");
        same("on the left", family -> Sample.runway("icao:5th", family));
        same("on both sides", family -> Sample.runway("icao:5th", family, sample -> sample.aid().setSide(AidSide.BOTH)));
        same("US", family -> Sample.runway("faa", family, sample -> sample.aid().setHeightGroup(3)));
        same("beside a glide path", family -> Sample.runway("icao:5th", family, Sample::glidePath));
        same("at a helipad", family -> Sample.helipad("icao:5th", family, 4));
        same("reversed", family -> changed(family, sample -> sample.unit(0).setSettingDeg(2.0)));
        same("under an obstacle", family -> changed(family, sample -> sample.obstacle("mast", -2060, 0, 180)));
        same("half known", family -> changed(family, sample -> sample.unit(1).setSettingDeg(null)));
        same("of another code", family -> changed(family, sample -> sample.runway().setCodeNumber(1)));
        EveryAidAnsweredTest.assertAllAnswered();
    }

    private static Sample changed(String family, Consumer<Sample> change) {
        Sample sample = Sample.runway("icao:5th", family);
        change.accept(sample);
        return sample;
    }

    /** A row of four on the left gets 61 outcomes at the least. */
    private static void same(String which, Function<String, Sample> make) {
        List<Said> row = said(make.apply(ROW));
        List<Said> trial = said(make.apply(TrialRow.KEY));
        assertEquals(row.stream().map(Said::toString).collect(Collectors.joining("\n")),
                trial.stream().map(Said::toString).collect(Collectors.joining("\n")), which);
        assertTrue(which.contains("helipad") || row.size() >= 61, which + ": " + row.size());
    }

    private static List<Said> said(Sample sample) {
        return sample.check().outcomes().stream().map(Said::of).toList();
    }
}
