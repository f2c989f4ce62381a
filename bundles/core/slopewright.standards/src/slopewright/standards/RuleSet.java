package slopewright.standards;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Words;

/** One edition of a set of rules: its values and tables, each with where it comes from. Immutable. */
public final class RuleSet {

    /**
     * What a rule set is called and covers.
     *
     * @param key       key of the rule set: {@code icao}, {@code easa}, {@code faa}, {@code casa}
     * @param edition   key of the edition
     * @param name      short name
     * @param title     the texts it rests on, as reports name it
     * @param note      what a reader must know
     * @param families  keys of the families that it covers
     * @param surface   how obstacle surfaces are made: {@code table} or {@code angular}
     * @param numbering order of unit names: {@code outer-first} or {@code runway-first}
     */
    public record Descriptor(String key, String edition, Argument name, Argument title, Argument note, List<String> families,
            String surface, String numbering) {

        /** Copies the list. */
        public Descriptor {
            families = List.copyOf(families);
        }
    }

    /**
     * The printed tables of a rule set; those it lacks are empty.
     *
     * @param wheelClearance wheel clearance over the threshold
     * @param surface        obstacle protection surface at runways
     * @param heliport       obstacle protection surface at heliports
     * @param aimingPoint    aiming point marking
     * @param crossingHeight visual threshold crossing heights
     * @param photometry     intensities of light units by direction; empty where none was read
     * @param remedies       what may be done about an object above an obstacle surface
     */
    public record Tables(Optional<WheelClearanceTable> wheelClearance, Optional<SurfaceTable> surface,
            Optional<HeliportSurfaceTable> heliport, Optional<AimingPointTable> aimingPoint, Optional<CrossingHeightTable> crossingHeight,
            List<PhotometryTable> photometry, Optional<RemedyTable> remedies) {
        /** Copies the list. */
        public Tables {
            photometry = List.copyOf(photometry);
        }

        /** Returns no tables at all. */
        public static Tables none() {
            return new Tables(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), List.of(),
                    Optional.empty());
        }
    }

    private final Descriptor descriptor;
    private final SortedMap<String, CitedValue> values;
    private final SortedMap<String, CitedChoice> choices;
    private final Map<String, CitedValue> byKey;
    private final Tables tables;
    private final Map<String, String> confirmations;
    private final Map<String, String> rejections;

    /** Makes a rule set of its parts, without choices. */
    public RuleSet(Descriptor descriptor, Map<String, CitedValue> values, Tables tables) {
        this(descriptor, values, Map.of(), tables);
    }

    /** Makes a rule set of its parts. */
    public RuleSet(Descriptor descriptor, Map<String, CitedValue> values, Map<String, CitedChoice> choices, Tables tables) {
        this(descriptor, new TreeMap<>(values), new TreeMap<>(choices), tables, Map.of(), Map.of());
    }

    private RuleSet(Descriptor descriptor, SortedMap<String, CitedValue> values, SortedMap<String, CitedChoice> choices, Tables tables,
            Map<String, String> confirmations, Map<String, String> rejections) {
        this.descriptor = descriptor;
        this.values = values;
        this.choices = choices;
        byKey = new HashMap<>(values);
        this.tables = tables;
        this.confirmations = Map.copyOf(confirmations);
        this.rejections = Map.copyOf(rejections);
    }

    /** Returns what it is called and covers. */
    public Descriptor descriptor() {
        return descriptor;
    }

    /** Returns the key of the rule set, without the edition. */
    public String key() {
        return descriptor.key();
    }

    /** Returns the key of the edition. */
    public String edition() {
        return descriptor.edition();
    }

    /** Returns whether it has rules for a family. */
    public boolean covers(String family) {
        return descriptor.families().contains(family);
    }

    /** Returns all values in the order of their keys. */
    public List<CitedValue> values() {
        return values.values().stream().map(this::confirmed).toList();
    }

    /** Returns a value, empty where the rule set has none with that key. */
    public Optional<CitedValue> find(String key) {
        CitedValue value = byKey.get(key);
        return value == null ? Optional.empty() : Optional.of(confirmed(value));
    }

    /**
     * Returns a value.
     *
     * @param key its key
     * @return the value
     * @throws IllegalArgumentException where the rule set has none with that key; the message names both
     */
    public CitedValue value(String key) {
        return find(key).orElseThrow(
                () -> new RulesException(Message.said("rules.no-value", descriptor.key(), descriptor.edition(), key)));
    }

    /** Returns all choices in the order of their keys. */
    public List<CitedChoice> choices() {
        return choices.values().stream().map(this::confirmed).toList();
    }

    /** Returns a choice, or a flag, empty where the rule set says nothing. */
    public Optional<CitedChoice> choice(String key) {
        return Optional.ofNullable(choices.get(key)).map(this::confirmed);
    }

    /**
     * Returns the unit in which the value with a key is printed; {@code choice} or {@code flag} for a choice; empty where there is none, as
     * for tables.
     */
    public Optional<String> unit(String key) {
        return find(key).map(CitedValue::printedUnit).or(() -> choice(key).map(found -> found.word().kind().unit()));
    }

    /** Returns where a value, a choice or a table comes from, by its key; empty where there is none. */
    public Optional<Citation> citation(String key) {
        return find(key).map(CitedValue::citation).or(() -> choice(key).map(CitedChoice::citation)).or(() -> tableCitation(key));
    }

    /** Returns the wheel clearance table, empty where there is none. */
    public Optional<WheelClearanceTable> wheelClearance() {
        return tables.wheelClearance().map(table -> new WheelClearanceTable(table.groups(), confirmed(table.citation()),
                confirmed(table.desired())));
    }

    /** Returns the table of obstacle surfaces at runways, empty where there is none. */
    public Optional<SurfaceTable> surface() {
        return tables.surface().map(table -> new SurfaceTable(table.rows(), table.fromIndicator(), confirmed(table.citation())));
    }

    /** Returns the table of obstacle surfaces at heliports, empty where there is none. */
    public Optional<HeliportSurfaceTable> heliportSurface() {
        return tables.heliport().map(table -> new HeliportSurfaceTable(table.rows(), confirmed(table.citation())));
    }

    /** Returns what may be done about an object above an obstacle surface, empty where no list was read. */
    public Optional<RemedyTable> remedies() {
        return tables.remedies().map(table -> new RemedyTable(table.kinds(), confirmed(table.citation())));
    }

    /** Returns the table of aiming point markings, empty where there is none. */
    public Optional<AimingPointTable> aimingPoint() {
        return tables.aimingPoint().map(table -> new AimingPointTable(table.bands(), confirmed(table.citation())));
    }

    /** Returns the table of crossing heights, empty where there is none. */
    public Optional<CrossingHeightTable> crossingHeight() {
        return tables.crossingHeight().map(table -> new CrossingHeightTable(table.groups(), confirmed(table.citation())));
    }

    /**
     * Returns the printed intensities of a family's light of one colour.
     *
     * @param family key of the family whose values it takes
     * @param colour key of the colour
     * @param night  whether the intensities of the night are asked for, where the source has others by night
     * @return the table, empty where none was read
     */
    public Optional<PhotometryTable> photometry(String family, String colour, boolean night) {
        return tables.photometry().stream().filter(table -> table.isFor(family, colour, night)).findFirst()
                .map(table -> table.citing(confirmed(table.citation())));
    }

    /**
     * Returns the number by which a person confirms a value, a choice or a table: the value as printed, the place of the word among those
     * of its kind, or the control total of the table, which is the sum of all numbers that it prints.
     *
     * @param key key of the value or table
     * @return the number, empty where the rule set has none of that key
     */
    public OptionalDouble confirmable(String key) {
        if (values.containsKey(key)) {
            return OptionalDouble.of(values.get(key).printed());
        }
        if (choices.containsKey(key)) {
            return OptionalDouble.of(choices.get(key).word().place());
        }
        return ControlTotals.of(tables, key);
    }

    /** Returns where a table comes from, by the key with which a project confirms it; empty where there is none. */
    public Optional<Citation> tableCitation(String key) {
        return tableCitations().stream().filter(citation -> citation.key().equals(key)).findFirst();
    }

    /** Returns where each table comes from. */
    public List<Citation> tableCitations() {
        Stream<Optional<Citation>> all = Stream.of(wheelClearance().map(WheelClearanceTable::citation),
                wheelClearance().map(WheelClearanceTable::desired), surface().map(SurfaceTable::citation),
                heliportSurface().map(HeliportSurfaceTable::citation), aimingPoint().map(AimingPointTable::citation),
                crossingHeight().map(CrossingHeightTable::citation));
        return Stream.concat(all.flatMap(Optional::stream), tables.photometry().stream().map(PhotometryTable::citation)).toList();
    }

    /** Returns the tables as they were read. */
    public Tables tables() {
        return tables;
    }

    /**
     * Returns the rule set with a value replaced by a person's own.
     *
     * @param key    key of a value that the rule set has
     * @param value  the new number, in the unit in which the old one is printed; for a choice the place of the word among those of its kind
     * @param reason why, and who says so; printed in reports
     * @return the changed rule set
     * @throws IllegalArgumentException where the rule set has no value with that key, or no word has that place
     */
    public RuleSet withOverride(String key, double value, String reason) {
        Source source = new Source("project", Message.of("cited.override", Words.name(reason)), CitedText.of(""));
        Optional<CitedChoice> chosen = choice(key);
        if (chosen.isPresent()) {
            return withChoice(chosen.get(), value, source);
        }
        CitedValue old = value(key);
        Argument was = CitedText.instead(old);
        SortedMap<String, CitedValue> changed = new TreeMap<>(values);
        changed.put(key, CitedValue.printed(value, old.printedUnit(), new Citation(key, source, CitedText.of(""), Provenance.OVERRIDE, was,
                "")));
        return new RuleSet(descriptor, changed, choices, tables, confirmations, rejections);
    }

    private RuleSet withChoice(CitedChoice old, double place, Source source) {
        RuleChoice word = old.word().kind().words().stream().filter(choice -> choice.place() == place).findFirst().orElseThrow(
                () -> new RulesException(Message.said("rules.no-choice", old.key(), place)));
        SortedMap<String, CitedChoice> changed = new TreeMap<>(choices);
        Argument was = CitedText.instead(old);
        changed.put(old.key(), new CitedChoice(word, new Citation(old.key(), source, CitedText.of(""), Provenance.OVERRIDE, was, "")));
        return new RuleSet(descriptor, values, changed, tables, confirmations, rejections);
    }

    /**
     * Returns the rule set with a value or table confirmed by a person.
     *
     * @param key key of the value or table
     * @param by  who confirmed it against which source
     * @return the changed rule set
     */
    public RuleSet withConfirmation(String key, String by) {
        Map<String, String> changed = new LinkedHashMap<>(confirmations);
        changed.put(key, by);
        return new RuleSet(descriptor, values, choices, tables, changed, rejections);
    }

    /**
     * Returns the rule set with a value or table rejected by a person: it still stands in for what the document says, but whatever rests
     * on it is to clear up, however well it was known.
     *
     * @param key key of the value or table
     * @param by  who rejected it, and why
     * @return the changed rule set
     */
    public RuleSet withRejection(String key, String by) {
        Map<String, String> changed = new LinkedHashMap<>(rejections);
        changed.put(key, by);
        return new RuleSet(descriptor, values, choices, tables, confirmations, changed);
    }

    private CitedValue confirmed(CitedValue value) {
        return confirmations.containsKey(value.key()) || rejections.containsKey(value.key())
                ? value.withCitation(confirmed(value.citation())) : value;
    }

    private CitedChoice confirmed(CitedChoice choice) {
        return choice.withCitation(confirmed(choice.citation()));
    }

    private Citation confirmed(Citation citation) {
        String against = rejections.get(citation.key());
        if (against != null) {
            return new Citation(citation.key(), citation.source(), citation.clause(), Provenance.REJECTED, Words.name(against), "");
        }
        String by = confirmations.get(citation.key());
        return by == null ? citation : citation.confirmed(by);
    }
}
