package slopewright.checks.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.Attempt;
import slopewright.evaluation.obstacles.SurfaceComparison;
import slopewright.evaluation.obstacles.Surroundings;
import slopewright.geometry.Angles;
import slopewright.geometry.Lengths;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachHost;
import slopewright.model.Helipad;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;
import slopewright.model.util.Projects;
import slopewright.siting.ElementNames;
import slopewright.siting.Families;
import slopewright.siting.IndicatorFamily;
import slopewright.siting.Input;
import slopewright.siting.Siting;
import slopewright.siting.SitingException;
import slopewright.siting.SitingRequest;
import slopewright.siting.ValueNames;
import slopewright.siting.site.SiteFrame;
import slopewright.standards.CitedChoice;
import slopewright.standards.CitedValue;
import slopewright.standards.RuleSet;

/** What rules ask of one approach aid. Missing inputs end the rule with their name. */
public final class AidFacts {

    private final AidEvaluation evaluation;

    public AidFacts(AidEvaluation evaluation) {
        this.evaluation = evaluation;
    }

    public ApproachAid aid() {
        return evaluation.aid();
    }

    public ApproachHost host() {
        return evaluation.host();
    }

    /** Returns the runway end; ends the rule at a helipad. */
    public RunwayEnd end() {
        if (host() instanceof RunwayEnd end) {
            return end;
        }
        throw Stop.notApplicable(Message.of("outcome.not-a-runway"));
    }

    public Optional<Runway> runway() {
        return Projects.runway(host());
    }

    public boolean atRunway() {
        return host() instanceof RunwayEnd;
    }

    /** Returns the helipad; ends the rule at a runway. */
    public Helipad helipad() {
        return Projects.helipad(host()).orElseThrow(() -> Stop.notApplicable(Message.of("outcome.not-a-helipad")));
    }

    public RuleSet rules() {
        return evaluation.rules();
    }

    public String family() {
        return String.valueOf(aid().getFamilyKey());
    }

    /** Returns the family; the rule set covers it. */
    public IndicatorFamily indicator() {
        return evaluation.family().orElseThrow();
    }

    /** Returns the evaluation of the aid. */
    public AidEvaluation evaluation() {
        return evaluation;
    }

    /** Returns the trade name of the family. */
    public Argument familyName() {
        return evaluation.family().map(Families::name).orElseGet(() -> Words.name(family()));
    }

    /** Returns a value of the rule set for this family, empty where it gives none. */
    public Optional<CitedValue> find(String name) {
        return rules().find(indicator().ruleKey() + "." + name);
    }

    /** Returns a value of the rule set for this family; ends the rule where it gives none. */
    public CitedValue value(String name) {
        return find(name).orElseThrow(() -> none(indicator().ruleKey() + "." + name));
    }

    /** Returns the end of a rule for which the rule set gives no value of a key. */
    public Stop none(String key) {
        return Stop.notApplicable(Message.of("outcome.no-value", rules().descriptor().name(), Words.name(rules().edition()),
                ValueNames.of(key)));
    }

    /** Returns a choice or a flag of the rule set for this family; ends the rule where it makes none. */
    public CitedChoice choice(String name) {
        String key = indicator().ruleKey() + "." + name;
        return rules().choice(key).orElseThrow(() -> none(key));
    }

    /** Returns a value that is not of one family; ends the rule where there is none. */
    public CitedValue common(String key) {
        return rules().find(key).orElseThrow(() -> none(key));
    }

    /** Returns whether the rule set gives a length of this family. */
    public boolean hasLength(String name) {
        return find(name + "-m").isPresent() || find(name + "-ft").isPresent();
    }

    /** Returns a length of the rule set in metres; ends the rule where it gives none. */
    public CitedValue length(String name) {
        Optional<CitedValue> inMetres = find(name + "-m");
        if (inMetres.isPresent()) {
            return inMetres.get();
        }
        CitedValue inFeet = find(name + "-ft").orElseThrow(() -> none(indicator().ruleKey() + "." + name + "-m"));
        return new CitedValue(Lengths.feetToMetres(inFeet.value()), "m", inFeet.citation());
    }

    /** Returns an angle of the rule set in decimal degrees; ends the rule where it gives none. */
    public CitedValue angle(String name) {
        Optional<CitedValue> inDegrees = find(name + "-deg");
        if (inDegrees.isPresent()) {
            return inDegrees.get();
        }
        CitedValue inMinutes = find(name + "-min").orElseThrow(() -> none(indicator().ruleKey() + "." + name + "-min"));
        return new CitedValue(Angles.minutesToDeg(inMinutes.value()), "deg", inMinutes.citation());
    }

    /** Returns the request; ends the rule where it cannot be made. */
    public SitingRequest request() {
        return orStop(evaluation.request());
    }

    /** Returns what the layout gives as it stands. */
    public Siting laid() {
        return orStop(evaluation.siting());
    }

    /** Returns everything that stands around in the frame on the ground; ends the rule where there is no frame. */
    public Surroundings surroundings() {
        return orStop(evaluation.surroundings());
    }

    /** Returns everything that stands there against the obstacle surface; ends the rule where there is no surface, with the reason. */
    public SurfaceComparison obstacles() {
        return orStop(evaluation.obstacles());
    }

    /** Returns the eye height over the origin on the slope itself; ends the rule where the family has none. */
    public double nominalEyeHeightM() {
        return laid().nominalEyeHeightM().orElseThrow(() -> Stop.notApplicable(Message.of("outcome.no-nominal-height")));
    }

    public SiteFrame frame() {
        return orStop(evaluation.frame());
    }

    private static <T> T orStop(Attempt<T> attempt) {
        return attempt.value().orElseThrow(() -> Stop.unsolved(attempt.reason().orElseThrow()));
    }

    /** Returns the layout that the rule set gives at the mean place of the units, whatever they are set to. */
    public Siting wantedAtUnits() {
        return site(atUnits().build());
    }

    private SitingRequest.Builder atUnits() {
        double alongM = units().stream().mapToDouble(UnitAt::alongM).average().orElseThrow();
        return request().toBuilder().ground(null).set(Input.GROUND_SLOPE, null).set(Input.LENS_ABOVE_GROUND, null)
                .set(Input.LENS_HEIGHT, 0.0).set(Input.DISTANCE, alongM);
    }

    /** Returns the same layout with so many units. */
    public Siting wantedAtUnits(int count) {
        return site(atUnits().set(Input.UNITS, (double) count).build());
    }

    /** Returns the approach slope, decimal degrees; it is known even where the settings make no signal. */
    public double slopeDeg() {
        return evaluation.siting().value().orElseGet(this::wantedAtUnits).slopeDeg();
    }

    /** Returns the layout that the rule set gives for a lens at the level where the lenses stand. */
    public Siting solvedAtLens() {
        laid();
        return orStop(evaluation.solvedAtLens());
    }

    private Siting site(SitingRequest request) {
        try {
            return Families.site(indicator(), request, rules());
        } catch (SitingException e) {
            throw Stop.unsolved(e.reason());
        }
    }

    /** Returns the units in document order; ends the rule where there are none. */
    public List<UnitAt> units() {
        if (aid().getUnits().isEmpty()) {
            throw Stop.missing(Message.of("missing.units-of", ElementNames.of(aid())));
        }
        return aid().getUnits().stream().map(UnitAt::new).toList();
    }

    /** Returns the units of each side from the runway outward, left side first; sides without units are left out. */
    public List<List<UnitAt>> sides() {
        List<UnitAt> left = new ArrayList<>();
        List<UnitAt> right = new ArrayList<>();
        for (UnitAt unit : units()) {
            (unit.rightM() < 0 ? left : right).add(unit);
        }
        return Stream.of(left, right).filter(side -> !side.isEmpty())
                .map(side -> side.stream().sorted(Comparator.comparingDouble(unit -> Math.abs(unit.rightM()))).toList()).toList();
    }

    /** Returns the units of a bar. */
    public List<UnitAt> bar(int bar) {
        List<UnitAt> found = units().stream().filter(unit -> unit.bar() == bar).toList();
        if (found.isEmpty()) {
            throw Stop.missing(Message.of("missing.units-of-bar", Words.count(bar)));
        }
        return found;
    }

    /** Returns the mean place of a bar along the runway. */
    public double barAlongM(int bar) {
        return bar(bar).stream().mapToDouble(UnitAt::alongM).average().orElseThrow();
    }

    /** Returns half the runway width. */
    public double halfWidthM() {
        return need(runway().map(Runway::getWidthM).orElse(null), Message.of("missing.runway-width")) / 2;
    }

    /** Returns the code number. */
    public int code() {
        return need(runway().map(Runway::getCodeNumber).orElse(null), Message.of("missing.code-number"));
    }

    /** Returns an input that must be there; its name is one of the catalogue. */
    public static <T> T need(T input, Message what) {
        if (input == null) {
            throw Stop.missing(what);
        }
        return input;
    }
}
