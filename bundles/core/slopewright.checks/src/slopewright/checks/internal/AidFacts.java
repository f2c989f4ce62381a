package slopewright.checks.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import slopewright.checks.AidSubject;
import slopewright.checks.field.ObstacleField;
import slopewright.geometry.Angles;
import slopewright.geometry.Lengths;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachHost;
import slopewright.model.Helipad;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;
import slopewright.model.util.Projects;
import slopewright.siting.Families;
import slopewright.siting.IndicatorFamily;
import slopewright.siting.Input;
import slopewright.siting.Siting;
import slopewright.siting.SitingException;
import slopewright.siting.SitingRequest;
import slopewright.siting.site.SiteFrame;
import slopewright.standards.CitedValue;
import slopewright.standards.RuleSet;

/** What rules ask of one approach aid. Missing inputs end the rule with their name. */
final class AidFacts {

    private final AidSubject subject;

    AidFacts(AidSubject subject) {
        this.subject = subject;
    }

    ApproachAid aid() {
        return subject.aid();
    }

    ApproachHost host() {
        return subject.host();
    }

    /** Returns the runway end; ends the rule at a helipad. */
    RunwayEnd end() {
        if (host() instanceof RunwayEnd end) {
            return end;
        }
        throw Stop.notApplicable("The rule is about runways.");
    }

    Optional<Runway> runway() {
        return Projects.runway(host());
    }

    boolean atRunway() {
        return host() instanceof RunwayEnd;
    }

    /** Returns the helipad; ends the rule at a runway. */
    Helipad helipad() {
        return Projects.helipad(host()).orElseThrow(() -> Stop.notApplicable("The rule is about helipads."));
    }

    RuleSet rules() {
        return subject.rules();
    }

    String family() {
        return String.valueOf(aid().getFamilyKey());
    }

    /** Returns the trade name of the family. */
    String familyName() {
        return subject.family().map(IndicatorFamily::name).orElse(family());
    }

    /** Returns a value of the rule set for this family, empty where it gives none. */
    Optional<CitedValue> find(String name) {
        return rules().find(family() + "." + name);
    }

    /** Returns a value of the rule set for this family; ends the rule where it gives none. */
    CitedValue value(String name) {
        return find(name).orElseThrow(() -> noneOf(name));
    }

    private Stop noneOf(String name) {
        return Stop.notApplicable("Rule set " + rules().key() + " (" + rules().edition() + ") gives no "
                + name.replaceAll("-(m|ft|deg|min|percent|v)$", "").replace('-', ' ').replace('.', ' ') + " for "
                + familyName() + ".");
    }

    /** Returns a value that is not of one family; ends the rule where there is none. */
    CitedValue common(String key) {
        return rules().find(key).orElseThrow(() -> noneOf(key));
    }

    /** Returns whether the rule set gives a length of this family. */
    boolean hasLength(String name) {
        return find(name + "-m").isPresent() || find(name + "-ft").isPresent();
    }

    /** Returns a length of the rule set in metres; ends the rule where it gives none. */
    CitedValue length(String name) {
        Optional<CitedValue> inMetres = find(name + "-m");
        if (inMetres.isPresent()) {
            return inMetres.get();
        }
        CitedValue inFeet = find(name + "-ft").orElseThrow(() -> noneOf(name));
        return new CitedValue(Lengths.feetToMetres(inFeet.value()), "m", inFeet.citation());
    }

    /** Returns an angle of the rule set in decimal degrees; ends the rule where it gives none. */
    CitedValue angle(String name) {
        Optional<CitedValue> inDegrees = find(name + "-deg");
        if (inDegrees.isPresent()) {
            return inDegrees.get();
        }
        CitedValue inMinutes = find(name + "-min").orElseThrow(() -> noneOf(name));
        return new CitedValue(Angles.minutesToDeg(inMinutes.value()), "deg", inMinutes.citation());
    }

    /** Returns the request; ends the rule where it can not be made. */
    SitingRequest request() {
        return orStop(subject.request());
    }

    /** Returns what the layout gives as it stands. */
    Siting laid() {
        return orStop(subject.laid());
    }

    /** Returns the obstacles in the frame on the ground; ends the rule where there is no frame. */
    ObstacleField obstacles() {
        frame();
        return subject.obstacles();
    }

    SiteFrame frame() {
        return orStop(subject.frame());
    }

    private static <T> T orStop(AidSubject.Attempt<T> attempt) {
        return attempt.value().orElseThrow(() -> Stop.unsolved(attempt.reason()));
    }

    /** Returns the layout that the rule set gives at the distance and level where the units stand. */
    Siting wantedHere() {
        Siting laid = laid();
        return site(atLens(laid).set(Input.DISTANCE, laid.distanceM()).build());
    }

    /** Returns the layout that the rule set gives for a lens at the level where the lenses stand. */
    Siting solvedAtLens() {
        return site(atLens(laid()).build());
    }

    private SitingRequest.Builder atLens(Siting laid) {
        return request().toBuilder().ground(null).set(Input.GROUND_SLOPE, null).set(Input.LENS_ABOVE_GROUND, null)
                .set(Input.LENS_HEIGHT, laid.reference().heightM());
    }

    private Siting site(SitingRequest request) {
        try {
            return Families.site(family(), request, rules());
        } catch (SitingException e) {
            throw Stop.unsolved(e.getMessage());
        }
    }

    /** Returns the units in document order; ends the rule where there are none. */
    List<UnitAt> units() {
        if (aid().getUnits().isEmpty()) {
            throw Stop.missing("light units of " + Projects.label(aid()));
        }
        return aid().getUnits().stream().map(UnitAt::new).toList();
    }

    /** Returns the units of each side from the runway outward, left side first; sides without units are left out. */
    List<List<UnitAt>> sides() {
        List<UnitAt> left = new ArrayList<>();
        List<UnitAt> right = new ArrayList<>();
        for (UnitAt unit : units()) {
            (unit.rightM() < 0 ? left : right).add(unit);
        }
        return Stream.of(left, right).filter(side -> !side.isEmpty())
                .map(side -> side.stream().sorted(Comparator.comparingDouble(unit -> Math.abs(unit.rightM()))).toList()).toList();
    }

    /** Returns the units of a bar. */
    List<UnitAt> bar(int bar) {
        List<UnitAt> found = units().stream().filter(unit -> unit.bar() == bar).toList();
        if (found.isEmpty()) {
            throw Stop.missing("units of bar " + bar);
        }
        return found;
    }

    /** Returns the mean place of a bar along the runway. */
    double barAlongM(int bar) {
        return bar(bar).stream().mapToDouble(UnitAt::alongM).average().orElseThrow();
    }

    /** Returns half the runway width. */
    double halfWidthM() {
        return need(runway().map(Runway::getWidthM).orElse(null), "runway width") / 2;
    }

    /** Returns the code number. */
    int code() {
        return need(runway().map(Runway::getCodeNumber).orElse(null), "code number of the runway");
    }

    /** Returns an input that must be there. */
    static <T> T need(T input, String what) {
        if (input == null) {
            throw Stop.missing(what);
        }
        return input;
    }
}
