package slopewright.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import slopewright.messages.Argument;
import slopewright.messages.MessageRenderer;
import slopewright.model.Project;
import slopewright.model.io.ProjectFile;
import slopewright.testkit.UnmarkedText;

/** No outcome of a demo says anything that stands in no catalogue. */
class MarkedFindingsTest {
    private static final MessageRenderer MARKED = MessageRenderer.of(MessageRenderer.MARKED);

    @ParameterizedTest
    @ValueSource(strings = {"harrow-vale", "harrow-vale-faults", "every-family"})
    void nothingIsSaidThatNobodyCanTranslate(String demo) throws Exception {
        Project project = ProjectFile.load(Path.of(System.getProperty("slopewright.root"), "demo-data", demo, demo + ".slopewright"));
        UnmarkedText unmarked = UnmarkedText.of(project);
        CheckResult result = Checks.run(project, Optional.empty());
        assertTrue(result.outcomes().size() > 500, result.outcomes().size() + " outcomes");
        assertFalse(unmarked.in("no translation").isEmpty(), "what is unmarked is found");
        Set<String> found = new TreeSet<>();
        for (Outcome outcome : result.outcomes()) {
            said(outcome).forEach(text -> unmarked.in(MARKED.write(text)).forEach(word -> found.add(outcome.rule() + ": " + word)));
        }
        assertEquals("", String.join("\n", found));
    }

    private static Stream<Argument> said(Outcome outcome) {
        return Stream.of(Stream.of(outcome.title(), outcome.explanation(), outcome.message(), outcome.elementPath()),
                outcome.action().stream(), outcome.missing().stream(), outcome.steps().stream(),
                outcome.citations().stream().flatMap(citation -> Stream.of(citation.text(), citation.note()))).flatMap(texts -> texts);
    }
}
