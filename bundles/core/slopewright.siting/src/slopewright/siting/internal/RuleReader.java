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
import slopewright.standards.Citation;
import slopewright.standards.CitedChoice;
import slopewright.standards.CitedValue;
import slopewright.standards.RuleChoice;
import slopewright.standards.RuleSet;

/** Reads values of a rule set and remembers each that was used. For one siting. */
final class RuleReader {

    private final RuleSet rules;
    private final Map<String, Siting.CitedUse> used = new LinkedHashMap<>();
    private final List<Message> notes = new ArrayList<>();

    RuleReader(RuleSet rules) {
        this.rules = rules;
    }

    RuleSet rules() {
        return rules;
    }

    /** Returns a length in metres. */
    double metres(String key) {
        Optional<CitedValue> inMetres = rules.find(key + "-m");
        if (inMetres.isPresent()) {
            return use(inMetres.get());
        }
        return Lengths.feetToMetres(use(value(key + "-ft")));
    }

    boolean hasMetres(String key) {
        return rules.find(key + "-m").isPresent() || rules.find(key + "-ft").isPresent();
    }

    /** Returns an angle in decimal degrees; minutes of arc are converted. */
    double degrees(String key) {
        Optional<CitedValue> inDegrees = rules.find(key + "-deg");
        if (inDegrees.isPresent()) {
            return use(inDegrees.get());
        }
        return Angles.minutesToDeg(use(value(key + "-min")));
    }

    /** Returns an angle that places the edge of a sector, decimal degrees; minutes of arc are converted. */
    double sectorDegrees(String key) {
        double degrees = degrees(key);
        List.of(key + "-deg", key + "-min").forEach(name -> used.computeIfPresent(name,
                (same, use) -> new Siting.CitedUse(use.name(), use.value(), use.unit(), use.citation(), true)));
        return degrees;
    }

    /** Returns the same in minutes of arc. */
    double sectorMinutes(String key) {
        return Angles.degToMinutes(sectorDegrees(key));
    }

    /** Returns an angle in minutes of arc. */
    double minutes(String key) {
        return use(value(key + "-min"));
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
        return rules.find(key).orElseThrow(() -> new SitingException(Message.of("siting.refused.no-value", Words.name(rules.key()),
                Words.name(rules.edition()), Words.name(key))));
    }

    private double use(CitedValue value) {
        used.putIfAbsent(value.key(), new Siting.CitedUse(value.key(), value.value(), value.unit(), value.citation()));
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
