package slopewright.evaluation;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.MessageRenderer;
import slopewright.messages.Printable;
import slopewright.messages.Words;
import slopewright.model.Project;
import slopewright.model.io.Program;
import slopewright.model.io.ProjectStamp;
import slopewright.standards.RuleSet;

/**
 * What an output was made from, so that any sheet, table or file leads back to one state of one project: every output carries it.
 *
 * @param project   name of the project
 * @param revision  its revision, a dash where none is entered
 * @param date      day of the revision
 * @param stamp     SHA-256 of the project file; empty where no file could hold the project as it stands
 * @param ruleSet   the rule set by its honest name
 * @param ruleSetId its key and edition, as a command takes them
 * @param verdict   what a check said of that state of the project, with its counts; empty where the output carries its verdicts itself
 */
public record MadeFrom(String project, String revision, String date, Optional<ProjectStamp> stamp, Argument ruleSet, String ruleSetId,
        Optional<Message> verdict) {

    /** The names of the parts for programs, in their order. */
    public static final List<String> NAMES = List.of("program", "project", "revision", "projectFileSha256", "ruleSet");
    /** The name of the verdict for programs, behind those. */
    public static final String VERDICT = "verdict";

    /** Refuses missing parts. */
    public MadeFrom {
        Objects.requireNonNull(project);
        Objects.requireNonNull(revision);
        Objects.requireNonNull(date);
        Objects.requireNonNull(stamp);
        Objects.requireNonNull(ruleSet);
        Objects.requireNonNull(ruleSetId);
        Objects.requireNonNull(verdict);
    }

    /**
     * Says what something was made from; reads the project file again to tell whether it holds the project as it stands.
     *
     * @param project the project
     * @param rules   the rule set that the output rests on
     */
    public static MadeFrom of(Project project, RuleSet rules) {
        return new MadeFrom(said(project.getName(), "unnamed project"), said(project.getRevision(), "-"),
                said(project.getDate(), "no date"), ProjectStamp.of(project), rules.descriptor().title(),
                rules.key() + ":" + rules.edition(), Optional.empty());
    }

    /** Returns the same under another rule set: that of one aid. */
    public MadeFrom under(RuleSet rules) {
        return new MadeFrom(project, revision, date, stamp, rules.descriptor().title(), rules.key() + ":" + rules.edition(), verdict);
    }

    /** Returns the same with the verdict of a check, so that figures that leave the program never leave without it. */
    public MadeFrom judged(Message words) {
        return new MadeFrom(project, revision, date, stamp, ruleSet, ruleSetId, Optional.of(words));
    }

    /** Says what an output about a whole project was made from. */
    public static MadeFrom of(ProjectEvaluation evaluation) {
        return of(evaluation.project(), evaluation.rules());
    }

    private static String said(String text, String otherwise) {
        return text == null || text.isBlank() ? otherwise : text;
    }

    /** Returns all digits of the project file, and whether it is saved as it stands. */
    public String file() {
        return stamp.map(found -> found.sha256() + (found.isSaved() ? "" : ", not saved as it stands"))
                .orElse("cannot be saved as it stands");
    }

    /** Returns the same in the words of a language. */
    public Message fileWords() {
        return stamp.map(found -> Message.of(found.isSaved() ? "made-from.file" : "made-from.file-unsaved", Words.name(found.sha256())))
                .orElseGet(() -> Message.of("made-from.file-unsavable"));
    }

    /** Returns it in one line: program, project file by its first digits, revision, rule set with edition. */
    public Message words() {
        String key = stamp.isEmpty() ? "made-from.unsavable" : stamp.get().isSaved() ? "made-from" : "made-from.unsaved";
        return Message.of(key, Words.name(Program.text()), Words.name(stamp.map(ProjectStamp::brief).orElse("-")), Words.name(revision),
                Words.name(ruleSetId));
    }

    /** Returns that line with the verdict where there is one, in a language. */
    public String brief(MessageRenderer renderer) {
        return renderer.render(words()) + verdict.map(said -> "; " + renderer.render(said)).orElse("");
    }

    /** Returns it for programs: what {@link #NAMES} names, with all digits of the project file, and the verdict where there is one. */
    public Map<String, String> facts() {
        return facts(MessageRenderer.of(Locale.ENGLISH));
    }

    /** Returns the same with the verdict in a language. */
    public Map<String, String> facts(MessageRenderer renderer) {
        List<String> values = List.of(Program.text(), project, revision, file(), ruleSetId);
        Map<String, String> facts = new LinkedHashMap<>();
        for (int i = 0; i < NAMES.size(); i++) {
            facts.put(NAMES.get(i), Printable.of(values.get(i)));
        }
        verdict.ifPresent(said -> facts.put(VERDICT, renderer.render(said)));
        return Collections.unmodifiableMap(facts);
    }
}
