package slopewright.rcp.internal.site;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.regex.Pattern;

import slopewright.checks.Checks;
import slopewright.checks.Outcome;
import slopewright.evaluation.ProjectRules;
import slopewright.evaluation.site.KnownRunway;
import slopewright.evaluation.site.NewSite;
import slopewright.evaluation.site.SiteNames;
import slopewright.evaluation.site.SiteNumber;
import slopewright.evaluation.site.SiteText;
import slopewright.model.Identified;
import slopewright.model.Project;
import slopewright.model.util.Ids;
import slopewright.rcp.internal.Messages;
import slopewright.siting.SitingException;
import slopewright.standards.RuleSet;
import slopewright.ui.MessageTexts;
import slopewright.ui.preferences.Preferences;
import slopewright.ui.units.Quantity;
import slopewright.ui.units.QuantityFormat;

/** What the user typed in the wizard so far, in the units of the window, and the site that it means. */
public final class SiteDraft {

    private static final Pattern DESIGNATOR = Pattern.compile("(0[1-9]|[12][0-9]|3[0-6])[LCR]?");

    private final NewSite site = new NewSite(Preferences.ruleSet());
    private final Map<SiteNumber, String> typed = new EnumMap<>(SiteNumber.class);
    private String familyKey = "";

    /** Starts with what is assumed. */
    public SiteDraft() {
        site.setName(Messages.get("site.default-name"));
        site.setGroupName(Messages.get("site.group"));
        site.set(SiteText.DATE, LocalDate.now().toString());
        showNumbers();
    }

    /** Returns the site. */
    public NewSite site() {
        return site;
    }

    /** Takes over a template: its first runway end or direction gives what is typed from now on. */
    public void start(Project project) {
        site.start(project);
        familyKey = site.familyKey().orElse("");
        showNumbers();
    }

    /** Takes over a runway of open data: it gives what is typed from now on. */
    public void start(KnownRunway runway) {
        site.start(runway);
        familyKey = "";
        showNumbers();
    }

    private void showNumbers() {
        QuantityFormat format = QuantityFormat.preferred();
        for (SiteNumber number : SiteNumber.values()) {
            OptionalDouble value = site.number(number);
            typed.put(number, value.isPresent() ? format.show(value.getAsDouble(), quantity(number)) : "");
        }
    }

    /** Returns what kind of number it is. */
    static Quantity quantity(SiteNumber number) {
        return switch (number) {
            case LATITUDE -> Quantity.LATITUDE;
            case LONGITUDE -> Quantity.LONGITUDE;
            case BEARING, SLOPE, FATO_BEARING, VARIATION, VARIATION_CHANGE -> Quantity.ANGLE;
            case GROUND_SPEED -> Quantity.KNOTS;
            case DESCENT -> Quantity.DESCENT;
            case EPOCH -> Quantity.NUMBER;
            default -> Quantity.LENGTH;
        };
    }

    /** Returns the name of a number. */
    static String label(SiteNumber number) {
        return Messages.get("site." + number.name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }

    /** Returns what is typed for a number. */
    public String text(SiteNumber number) {
        return typed.get(number);
    }

    /** Keeps what is typed for a number; what is not understood is not known, and what stands there already keeps all its digits. */
    public void type(SiteNumber number, String text) {
        if (text.equals(typed.get(number))) {
            return;
        }
        typed.put(number, text);
        try {
            site.set(number, text.isBlank() ? OptionalDouble.empty()
                    : OptionalDouble.of(QuantityFormat.preferred().read(text, quantity(number))));
        } catch (IllegalArgumentException e) {
            site.set(number, OptionalDouble.empty());
        }
    }

    /** Returns what is wrong with a number, empty where nothing is. */
    public Optional<String> problem(SiteNumber number) {
        String label = label(number);
        if (!number.isAsked(site.isHelipad()) || text(number).isBlank() && number.isOptional()) {
            return Optional.empty();
        }
        if (text(number).isBlank()) {
            return Optional.of(Messages.get("site.needed", label));
        }
        try {
            QuantityFormat format = QuantityFormat.preferred();
            double value = format.read(text(number), quantity(number));
            return value >= number.min() && value <= number.max() ? Optional.empty()
                    : Optional.of(Messages.get("site.range", label, format.showWithUnit(number.min(), quantity(number)),
                            format.showWithUnit(number.max(), quantity(number))));
        } catch (IllegalArgumentException e) {
            return Optional.of(label + ": " + MessageTexts.reason(e));
        }
    }

    /** Returns what is wrong with the place as a whole, empty where nothing is. */
    public Optional<String> placeProblem() {
        boolean half = text(SiteNumber.LATITUDE).isBlank() != text(SiteNumber.LONGITUDE).isBlank();
        return half ? Optional.of(Messages.get("site.half-place")) : Optional.empty();
    }

    /** Returns what is wrong with the designator of a runway end, empty where nothing is. */
    public Optional<String> designatorProblem() {
        return site.isHelipad() || DESIGNATOR.matcher(site.designator().strip()).matches() ? Optional.empty()
                : Optional.of(Messages.get("site.no-designator", site.designator()));
    }

    /**
     * Returns what the rules say of some elements of the site as it is typed. Rules look at a place where an indicator stands; until a
     * family is chosen a usual one stands there, where it can.
     *
     * @param about which elements
     */
    List<Outcome> outcomes(Predicate<Identified> about) {
        Project project = inUse();
        return Checks.run(project, Optional.empty()).outcomes().stream()
                .filter(outcome -> Ids.find(project, outcome.elementId()).filter(about).isPresent()).toList();
    }

    private Project inUse() {
        try {
            return laidOut(familyKey.isEmpty() ? site.isHelipad() ? "heliport-sector" : "four-unit-row" : familyKey);
        } catch (SitingException | IllegalArgumentException e) {
            return project();
        }
    }

    /** Returns the rules that the site is laid out by. */
    public RuleSet rules() {
        return ProjectRules.of(project(), Optional.empty());
    }

    /** Makes the project of what is known, without an aid. Nothing of it is shared with an earlier one. */
    public Project project() {
        return site.project(names());
    }

    private SiteNames names() {
        return SiteNames.in(MessageTexts::of, site.isHelipad() ? site.designator() : site.runwayDesignator());
    }

    /** Makes the project with the chosen indicator at every place. */
    public Project laidOut() {
        return laidOut(familyKey);
    }

    /** Makes the project with an indicator of a family at every place. */
    Project laidOut(String key) {
        return site.laidOut(names(), key);
    }

    /** Returns the key of the chosen family, empty where none is chosen. */
    public String familyKey() {
        return familyKey;
    }

    /** Chooses a family. */
    public void setFamilyKey(String to) {
        familyKey = to;
    }
}
