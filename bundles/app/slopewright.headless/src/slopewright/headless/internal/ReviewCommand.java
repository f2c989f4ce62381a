package slopewright.headless.internal;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import slopewright.checks.CheckResult;
import slopewright.checks.Checks;
import slopewright.checks.RuleCatalogue;
import slopewright.evaluation.MadeFrom;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.evaluation.Reviews;
import slopewright.model.Project;
import slopewright.model.ReviewKind;
import slopewright.model.ReviewNote;
import slopewright.model.util.Projects;
import slopewright.siting.SitingException;

/** Lists the notes of a review, and keeps a comment, an answer, an acceptance, a return or a signature. */
@CommandLine.Command(name = "review", sortOptions = false, description = {"List the comments of a review and how each stands; with one of"
        + " --comment, --answer, --accept, --return and --sign-off keep what somebody says.",
        "No note changes a verdict; a signature holds the project as it stands, so that a later change shows."})
final class ReviewCommand extends Command {
    @Parameters(index = "0", paramLabel = "FILE", description = "project file")
    private Path file;

    @Option(names = "--comment", paramLabel = "TEXT", description = "a comment on an --element, a --rule, or the whole project")
    private String comment;

    @Option(names = "--element", paramLabel = "ID", description = "element that the comment is about")
    private String element;

    @Option(names = "--rule", paramLabel = "ID", description = "rule whose outcome the comment is about")
    private String rule;

    @Option(names = "--answer", paramLabel = "NOTE", description = "answer a comment, with --text")
    private String answer;

    @Option(names = "--accept", paramLabel = "NOTE", description = "accept what was answered to a comment")
    private String accept;

    @Option(names = "--return", paramLabel = "NOTE", description = "return a comment, with --text")
    private String back;

    @Option(names = "--sign-off", description = "sign the project off as it stands; no comment may be open")
    private boolean signOff;

    @Option(names = "--text", paramLabel = "TEXT", description = "the words of an answer or a return")
    private String text;

    @Option(names = "--by", paramLabel = "NAME", description = "who says it; the author of the project only comments and answers")
    private String person;

    @Option(names = "--date", paramLabel = "DATE", converter = DateWord.class, description = "when, year, month and day")
    private LocalDate date;

    @Option(names = "--json", description = "print one JSON document")
    private boolean json;

    @Mixin
    private OptionalOutput output;

    @Override
    public Integer call() {
        long said = Stream.of(comment, answer, accept, back, signOff ? "" : null).filter(word -> word != null).count();
        if (said > 1) {
            throw new UsageException("one of --comment, --answer, --accept, --return and --sign-off at a time");
        }
        if (comment == null && (element != null || rule != null)) {
            throw new UsageException("--element and --rule say what a --comment is about");
        }
        Project project = ProjectFiles.load(file);
        if (said == 0) {
            return list(project);
        }
        if (person == null || date == null || output.file().isEmpty()) {
            throw new UsageException("to keep a note, name who says it with --by, when with --date, and the file for the changed project"
                    + " with -o");
        }
        try {
            ReviewNote note = keep(project);
            Path target = output.file().orElseThrow();
            output.write(target, project);
            streams().sayf("%s: %s, %s by %s", target, note.getId(), word(note.getKind()), note.getPerson());
        } catch (SitingException e) {
            throw new UsageException(e.getMessage());
        }
        return ExitCodes.OK;
    }

    private ReviewNote keep(Project project) {
        Reviews.Said said = new Reviews.Said(comment != null ? comment : Optional.ofNullable(text).orElse(""), person, date);
        if (comment != null) {
            if (rule != null && RuleCatalogue.find(rule).isEmpty()) {
                throw new UsageException("there is no rule '" + rule + "'");
            }
            return Reviews.comment(project, Optional.ofNullable(element), Optional.ofNullable(rule), said);
        }
        if (signOff) {
            CheckResult result = Checks.run(ProjectEvaluation.of(project, Optional.empty()), each -> true);
            return Reviews.signOff(project, new Reviews.Said((said.text() + " " + result.signedCounts().english()).strip(), person, date));
        }
        return answer != null ? Reviews.reply(project, answer, ReviewKind.ANSWER, said)
                : accept != null ? Reviews.reply(project, accept, ReviewKind.ACCEPTED, said)
                        : Reviews.reply(project, back, ReviewKind.RETURNED, said);
    }

    private Integer list(Project project) {
        if (json) {
            Json.print(document(project), MadeFrom.of(project, ProjectFiles.rules(project, Optional.empty())), streams().out);
            return ExitCodes.OK;
        }
        for (Reviews.Thread thread : Reviews.threads(project)) {
            ReviewNote note = thread.comment();
            streams().say(note.getId() + " [" + word(thread.state()) + "] " + about(project, note) + ": " + said(note));
            thread.replies().forEach(reply -> streams().say("  " + reply.getId() + " " + word(reply.getKind()) + ": " + said(reply)));
        }
        long open = Reviews.threads(project).stream().filter(Reviews.Thread::isOpen).count();
        streams().sayf("%d of %d comments are open", open, Reviews.threads(project).size());
        streams().say(Reviews.signedOff(project).map(note -> "signed off: " + said(note) + (Reviews.isAsSigned(project, note) ? ""
                : "; the project was changed since")).orElse("not signed off"));
        return ExitCodes.OK;
    }

    private static String about(Project project, ReviewNote note) {
        String place = note.getElementId() == null ? "the project"
                : Reviews.element(project, note).map(Projects::path).orElse(note.getElementId());
        return note.getRuleId() == null ? place : place + ", " + note.getRuleId();
    }

    private static String said(ReviewNote note) {
        return (note.getText() == null ? "" : note.getText() + " ") + "(" + note.getPerson() + ", " + note.getDate() + ")";
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static ObjectNode document(Project project) {
        ObjectNode document = Json.object();
        ArrayNode comments = document.putArray("comments");
        for (Reviews.Thread thread : Reviews.threads(project)) {
            ObjectNode node = note(comments.addObject(), thread.comment());
            node.put("state", word(thread.state()));
            node.put("element", thread.comment().getElementId());
            node.put("rule", thread.comment().getRuleId());
            ArrayNode replies = node.putArray("replies");
            thread.replies().forEach(reply -> note(replies.addObject(), reply));
        }
        Reviews.signedOff(project).ifPresentOrElse(signature -> note(document.putObject("signedOff"), signature).put("asSigned",
                Reviews.isAsSigned(project, signature)), () -> document.putNull("signedOff"));
        return document;
    }

    private static ObjectNode note(ObjectNode node, ReviewNote note) {
        return node.put("id", note.getId()).put("kind", word(note.getKind())).put("text", note.getText()).put("person", note.getPerson())
                .put("date", note.getDate());
    }
}
