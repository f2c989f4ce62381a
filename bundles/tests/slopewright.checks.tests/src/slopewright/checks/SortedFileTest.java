package slopewright.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;

import org.eclipse.emf.common.util.ECollections;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import slopewright.model.Aerodrome;
import slopewright.model.util.Ids;

/** In which order obstacles and blocks stand in the file says nothing: every rule says the same of the same elements. */
class SortedFileTest {

    static List<RuleCase> cases() {
        return RuleContractTest.cases();
    }

    @ParameterizedTest
    @MethodSource("cases")
    void whatStandsLastInTheFileMayAsWellStandFirst(RuleCase one) {
        Sample sample = one.sample().get();
        Ids.assign(sample.project());
        List<String> before = said(sample, one.rule());
        Aerodrome aerodrome = sample.project().getAerodrome();
        if (aerodrome != null) {
            ECollections.reverse(aerodrome.getObstacles());
        }
        ECollections.reverse(sample.project().getSurveyBlocks());
        assertEquals(before, said(sample, one.rule()));
    }

    private static List<String> said(Sample sample, String rule) {
        return sample.outcomes(rule).stream()
                .map(outcome -> outcome.result() + " " + outcome.elementId() + " " + outcome.explanation().english())
                .sorted().toList();
    }
}
