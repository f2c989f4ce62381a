package slopewright.siting.internal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import slopewright.geometry.Angles;
import slopewright.geometry.Lengths;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.siting.Siting;
import slopewright.siting.SitingException;
import slopewright.siting.ValueNames;
import slopewright.standards.Citation;
import slopewright.standards.CitedChoice;
import slopewright.standards.CitedValue;
import slopewright.standards.RuleChoice;
import slopewright.standards.RuleSet;

/** Reads values of a rule set and remembers each that was used. For one siting. */
final class RuleReader {

    private static final int USUAL_COUNT = 48;

    private final RuleSet rules;
    private final Map<String, Siting.CitedUse> used = new LinkedHashMap<>(USUAL_COUNT);
    private final List<Message> notes = new ArrayList<>();

    RuleReader(RuleSet rules) {
        this.rules = rules;
    }

    RuleSet rules() {
        return rules;
    }

    /** Returns a length in metres. */
    double metres(String key) {
        return metres(RuleName.of(key));
    }

    /** Returns a length in metres. */
    double metres(RuleName name) {
        Optional<CitedValue> inMetres = rules.find(name.metres());
        if (inMetres.isPresent()) {
            return use(inMetres.get());
        }
        return Lengths.feetToMetres(use(value(name.feet())));
    }

    boolean hasMetres(String key) {
        return hasMetres(RuleName.of(key));
    }

    boolean hasMetres(RuleName name) {
        return has(name.metres()) || has(name.feet());
    }

    /** Returns an angle in decimal degrees; minutes of arc are converted. */
    double degrees(String key) {
        return degrees(RuleName.of(key));
    }

    /** Returns an angle in decimal degrees; minutes of arc are converted. */
    double degrees(RuleName name) {
        return degrees(name, false);
    }

    /** Returns an angle that places the edge of a sector, decimal degrees; minutes of arc are converted. */
    double sectorDegrees(String key) {
        return sectorDegrees(RuleName.of(key));
    }

    /** Returns an angle that places the edge of a sector, decimal degrees; minutes of arc are converted. */
    double sectorDegrees(RuleName name) {
        return degrees(name, true);
    }

    private double degrees(RuleName name, boolean placesEdge) {
        Optional<CitedValue> inDegrees = rules.find(name.degrees());
        return inDegrees.isPresent() ? use(inDegrees.get(), placesEdge) : Angles.minutesToDeg(use(value(name.minutes()), placesEdge));
    }

    /** Returns the same in minutes of arc. */
    double sectorMinutes(String key) {
        return Angles.degToMinutes(sectorDegrees(key));
    }

    /** Returns an angle in minutes of arc. */
    double minutes(String key) {
        return use(value(key + "-min"));
    }

    /** Returns an angle in minutes of arc. */
    double minutes(RuleName name) {
        return use(value(name.minutes()));
    }

    /** Returns a rate in hertz. */
    double hertz(String key) {
        return use(value(key + "-hz"));
    }

    /** Returns whether the rule set chooses a word. */
    boolean chooses(String key, RuleChoice word) {
        Optional<CitedChoice> found = rules.choice(key);
        found.ifPresent(choice -> used.putIfAbsent(key, new Siting.CitedUse(key, choice.word().place(), choice.word().kind().unit(),
                choice.citation())));
        return found.filter(choice -> choice.word() == word).isPresent();
    }

    boolean has(String key) {
        return rules.find(key).isPresent();
    }

    private CitedValue value(String key) {
        return rules.find(key).orElseThrow(() -> new SitingException(Message.of("siting.refused.no-value", rules.descriptor().name(),
                Words.name(rules.edition()), ValueNames.of(key))));
    }

    private double use(CitedValue value) {
        return use(value, false);
    }

    /** Remembers a value; one that places an edge anywhere in the layout is remembered as doing so. */
    private double use(CitedValue value, boolean placesEdge) {
        Siting.CitedUse before = used.get(value.key());
        if (before == null || placesEdge && !before.isSector()) {
            used.put(value.key(), new Siting.CitedUse(value.key(), value.value(), value.unit(), value.citation(), placesEdge));
        }
        return value.value();
    }

    void use(String name, double value, String unit, Citation citation) {
        used.putIfAbsent(name, new Siting.CitedUse(name, value, unit, citation));
    }

    void note(Message note) {
        if (!notes.contains(note)) {
            notes.add(note);
        }
    }

    List<Message> notes() {
        return notes;
    }

    List<Siting.CitedUse> citations() {
        return List.copyOf(used.values());
    }
}
