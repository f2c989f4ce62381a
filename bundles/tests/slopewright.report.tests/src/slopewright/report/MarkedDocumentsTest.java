package slopewright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import slopewright.messages.MessageRenderer;
import slopewright.model.Project;
import slopewright.report.handover.Deliverables;
import slopewright.report.handover.HandoverFile;
import slopewright.report.handover.HandoverOptions;
import slopewright.report.handover.HandoverSource;
import slopewright.siting.SitingException;
import slopewright.testkit.UnmarkedText;

/** Whatever is handed over for people to read says nothing that stands in no catalogue; drawings of every family stand for all. */
class MarkedDocumentsTest {

    private static final HandoverOptions OPTIONS = new HandoverOptions(LocalDate.of(2026, 6, 1), PaperSize.A4, MessageRenderer.MARKED);
    private static final Set<String> READ = Set.of("html", "svg", "txt");

    @ParameterizedTest
    @ValueSource(strings = {"harrow-vale", "harrow-vale-faults", "every-family"})
    void nothingIsSaidThatNobodyCanTranslate(String demo) {
        Project project = Demo.project(demo);
        UnmarkedText unmarked = UnmarkedText.of(project);
        Set<String> found = new TreeSet<>();
        HandoverSource source = new HandoverSource(project);
        List<String> read = new ArrayList<>();
        for (HandoverFile file : Deliverables.of(project)) {
            if (READ.contains(file.extension()) && (demo.equals("every-family") || !file.extension().equals("svg"))) {
                text(file, source).ifPresent(text -> {
                    read.add(file.fileName());
                    unmarked.in(text).forEach(word -> found.add(file.kind() + ": " + word));
                });
            }
        }
        assertFalse(unmarked.in("no translation").isEmpty(), "what is unmarked is found");
        assertTrue(read.size() >= 8, read.toString());
        assertEquals("", String.join("\n", found));
    }

    /** The words of a file; empty where it cannot be made, as of the faults of a demo, which is said elsewhere. */
    private static Optional<String> text(HandoverFile file, HandoverSource source) {
        try {
            return Optional.of(text(new String(file.writer().write(source, OPTIONS), StandardCharsets.UTF_8)));
        } catch (ReportException | SitingException | IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    private static String text(String markup) {
        return markup.replaceAll("(?s)<(style|script)\\b.*?</\\1>", " ").replaceAll("<[^>]*>", " ").replace("&lt;", "<").replace("&gt;",
                ">")
                .replace("&quot;", "\"").replace("&amp;", "&");
    }
}
