package slopewright.evaluation;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;

import slopewright.messages.Message;
import slopewright.model.ApproachAid;
import slopewright.model.Project;
import slopewright.model.ValueConfirmation;
import slopewright.model.ValueOverride;
import slopewright.model.io.ProjectFile;
import slopewright.standards.CitedValue;
import slopewright.standards.OwnRuleSets;
import slopewright.standards.RuleSet;
import slopewright.standards.RuleSets;
import slopewright.standards.RulesException;
import slopewright.standards.StandardsException;

/**
 * The rule set of a project and of each of its aids: the one that is named, with the overrides and confirmations of the project. A
 * confirmation counts only for the edition that it names, with the very number that the edition has, and as it was sealed.
 */
public final class ProjectRules {
    /** The rule set of a project that names none. */
    public static final String DEFAULT = "icao";
    private static final double SAME = 1e-9;

    private ProjectRules() {
    }

    /**
     * Returns a rule set with the overrides and confirmations of a project.
     *
     * @param project the project
     * @param name    name of the rule set, or path of a folder with an organisation's own; empty for the one that the project names
     * @return the rule set
     * @throws IllegalArgumentException where there is none of that name, or an override names an unknown value; the message says which
     */
    public static RuleSet of(Project project, Optional<String> name) {
        String key = name.orElseGet(() -> project.getRuleSetKey() == null ? DEFAULT : stored(project.getRuleSetKey()));
        RuleSet rules = find(project, key).orElseThrow(() -> new RulesException(Message.said("rules.none", key,
                String.join(", ", RuleSets.names()))));
        for (ValueOverride override : project.getOverrides()) {
            if (override.getRuleSetKey() == null || isFor(rules, override.getRuleSetKey())) {
                if (override.getValue() == null || override.getValueKey() == null) {
                    throw new RulesException(Message.said("rules.empty-override", override.getId()));
                }
                rules = rules.withOverride(override.getValueKey(), override.getValue(), text(override.getReason(), override.getPerson(),
                        override.getDate()));
            }
        }
        for (ValueConfirmation confirmation : project.getConfirmations()) {
            if (counts(rules, confirmation)) {
                String by = text(confirmation.getSource(), confirmation.getPerson(), confirmation.getDate());
                rules = Boolean.TRUE.equals(confirmation.getRejected()) ? rules.withRejection(confirmation.getValueKey(),
                        confirmation.getReason() + " (" + by + ")") : rules.withConfirmation(confirmation.getValueKey(), by);
            }
        }
        return rules;
    }

    /**
     * Returns the rule set of one aid: the one that was named, else its own where there is one of that name, else that of the project.
     * A name that is not known is a finding of its own, not a reason to check nothing.
     *
     * @param project the project
     * @param aid     an aid in it
     * @param name    name of the rule set; empty for the aid's own
     * @return the rule set
     * @throws IllegalArgumentException as for a project
     */
    public static RuleSet of(Project project, ApproachAid aid, Optional<String> name) {
        return of(project, name(project, aid, name));
    }

    /** Returns the name of the rule set of one aid, as above; empty where it is that of the project. */
    static Optional<String> name(Project project, ApproachAid aid, Optional<String> name) {
        return name.or(() -> Optional.ofNullable(aid.getRuleSetKey()).map(ProjectRules::stored)
                .filter(key -> find(project, key).isPresent()));
    }

    /**
     * Returns a value that is of no family, such as the range of a signal: of a rule set, or where that is silent of that of the United
     * States, which alone publishes it. Under every rule set a light that nobody sees is none.
     *
     * @param rules a rule set
     * @param key   key of the value
     * @return the value, with the citation of the rule set that has it
     */
    public static CitedValue common(RuleSet rules, String key) {
        return rules.find(key).orElseGet(() -> RuleSets.find("faa").orElseThrow().value(key));
    }

    /**
     * Returns what a name means that stands in a file: without an edition, {@code icao} is the edition that was the only one when such
     * names were written, and {@code icao:later}, which there is no more, is the edition that it stood for.
     *
     * @param name a name as it stands in a file
     * @return the name with which the rule set is found now
     */
    public static String stored(String name) {
        return switch (name) {
            case "icao" -> "icao:5th";
            case "icao:later" -> "icao:9th";
            default -> name;
        };
    }

    /**
     * Finds a rule set: a shipped one, the project's own, or one in a folder.
     *
     * @param project the project, for the folder that it names
     * @param name    key, key and edition joined by a colon, or path of a folder
     * @return the rule set, empty where there is none
     * @throws IllegalArgumentException where a folder that is named holds none that is sound; the message names file, line and reason
     */
    public static Optional<RuleSet> find(Project project, String name) {
        Optional<RuleSet> shipped = RuleSets.find(name);
        if (shipped.isPresent()) {
            return shipped;
        }
        Optional<RuleSet> own = own(project).filter(found -> name.equals(found.key()) || name.equals(found.key() + ":"
                + found.edition()));
        if (own.isPresent()) {
            return own;
        }
        try {
            Path folder = Path.of(name);
            return folder.getNameCount() > 0 && Files.isDirectory(folder) ? Optional.of(OwnRuleSets.read(folder)) : Optional.empty();
        } catch (InvalidPathException e) {
            return Optional.empty();
        } catch (StandardsException e) {
            throw new RulesException(e.reason());
        }
    }

    /**
     * Returns the own rule set in the folder that a project names, empty where it names none.
     *
     * @throws IllegalArgumentException where the folder holds none that is sound; the message names file, line and reason
     */
    public static Optional<RuleSet> own(Project project) {
        try {
            return ownFolder(project).map(OwnRuleSets::read);
        } catch (StandardsException e) {
            throw new RulesException(e.reason());
        }
    }

    /** Returns the folder of the own rule set that a project names, empty where it names none. */
    static Optional<Path> ownFolder(Project project) {
        if (project.getRuleSetFolder() == null || project.getRuleSetFolder().isBlank()) {
            return Optional.empty();
        }
        try {
            return Optional.of(ProjectFile.folder(project).orElse(Path.of("")).resolve(project.getRuleSetFolder()).normalize());
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }

    /**
     * Returns whether what a project says of a value counts for a rule set: it fits, and is whole and sealed.
     *
     * @param rules        a rule set
     * @param confirmation a confirmation or rejection
     */
    public static boolean counts(RuleSet rules, ValueConfirmation confirmation) {
        return fits(rules, confirmation) && Confirmations.isWhole(confirmation) && Confirmations.isSealed(confirmation);
    }

    /**
     * Returns whether a confirmation is one of a rule set: it names the rule set with its edition and a value of it, and gives the number
     * that the rule set has (the control total of a table) with its unit.
     *
     * @param rules        a rule set
     * @param confirmation a confirmation or rejection
     */
    public static boolean fits(RuleSet rules, ValueConfirmation confirmation) {
        if (confirmation.getValueKey() == null || confirmation.getValue() == null || confirmation.getRuleSetKey() == null
                || !isFor(rules, confirmation.getRuleSetKey())) {
            return false;
        }
        OptionalDouble number = rules.confirmable(confirmation.getValueKey());
        boolean unit = rules.unit(confirmation.getValueKey()).map(known -> known.equals(confirmation.getUnit())).orElse(true);
        return unit && number.isPresent()
                && Math.abs(number.getAsDouble() - confirmation.getValue()) <= SAME * Math.max(1, Math.abs(number.getAsDouble()));
    }

    private static boolean isFor(RuleSet rules, String name) {
        String full = rules.key() + ":" + rules.edition();
        String meant = stored(name);
        return full.equals(meant) || !meant.contains(":") && RuleSets.find(meant).filter(usual -> full.equals(usual.key() + ":"
                + usual.edition())).isPresent();
    }

    private static String text(String what, String person, String date) {
        StringBuilder text = new StringBuilder(what == null ? "no reason given" : what);
        if (person != null) {
            text.append(", ").append(person);
        }
        return date == null ? text.toString() : text.append(", ").append(date).toString();
    }
}
