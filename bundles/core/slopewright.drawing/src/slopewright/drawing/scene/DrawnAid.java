package slopewright.drawing.scene;

import java.util.Objects;
import java.util.Optional;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.Attempt;
import slopewright.evaluation.obstacles.SurfaceComparison;
import slopewright.evaluation.obstacles.Surroundings;
import slopewright.geometry.Lengths;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.MessageRenderer;
import slopewright.messages.Words;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachHost;
import slopewright.model.LightUnit;
import slopewright.model.Project;
import slopewright.model.RunwayEnd;
import slopewright.model.util.Projects;
import slopewright.siting.ElementNames;
import slopewright.siting.Siting;
import slopewright.siting.UnitPlan;
import slopewright.siting.site.SiteFrame;

/**
 * An approach aid that is drawn, as it was evaluated: as it stands, or as a copy of it proposes. Drawings compute nothing of their own
 * about it.
 *
 * @param evaluation   what the aid gives
 * @param siting       its layout
 * @param frame        the frame of its runway end or helipad on the ground
 * @param surroundings everything that stands there
 * @param language     in which language, and in metres or feet, the drawing is lettered
 */
public record DrawnAid(AidEvaluation evaluation, Siting siting, SiteFrame frame, Surroundings surroundings, MessageRenderer language) {

    /** Refuses missing parts. */
    public DrawnAid {
        Objects.requireNonNull(evaluation);
        Objects.requireNonNull(siting);
        Objects.requireNonNull(frame);
        Objects.requireNonNull(surroundings);
        Objects.requireNonNull(language);
    }

    /**
     * Makes one of what an aid gives.
     *
     * @param evaluation what the aid gives
     * @param language   in which language, and in metres or feet, the drawing is lettered
     * @return what is needed to draw it
     * @throws slopewright.siting.SitingException where it has no layout, or its place on the ground is not known; the message says why
     */
    public static DrawnAid of(AidEvaluation evaluation, MessageRenderer language) {
        return of(evaluation, evaluation.siting(), language);
    }

    /**
     * Makes one of what an aid gives as it stands, or, where it has no units yet, as its rule set lays it out: for drawings that say so.
     *
     * @param evaluation what the aid gives
     * @param language   as above
     * @return what is needed to draw it
     * @throws slopewright.siting.SitingException as above
     */
    public static DrawnAid laidOut(AidEvaluation evaluation, MessageRenderer language) {
        return of(evaluation, evaluation.layout(), language);
    }

    private static DrawnAid of(AidEvaluation evaluation, Attempt<Siting> siting, MessageRenderer language) {
        return new DrawnAid(evaluation, siting.orThrow(), evaluation.frame().orThrow(), evaluation.surroundings().orThrow(), language);
    }

    /** Returns the aid. */
    public ApproachAid aid() {
        return evaluation.aid();
    }

    /** Returns its runway end or approach direction. */
    public ApproachHost host() {
        return evaluation.host();
    }

    /** Returns the project. */
    public Project project() {
        return Projects.project(evaluation.aid()).orElseThrow();
    }

    /** Returns everything that stands there against the obstacle surface of the layout; empty where there is no surface. */
    public Optional<SurfaceComparison> comparison() {
        return siting.surface().map(plan -> surroundings.compare(plan.geometry()));
    }

    /** Returns whether it stands at a runway rather than a helipad. */
    public boolean atRunway() {
        return host() instanceof RunwayEnd;
    }

    /** Returns what the origin of the frame is called by itself, as an argument of a message. */
    public Argument originName() {
        return Words.term(atRunway() ? "drawing.threshold" : "drawing.hover-point");
    }

    /** Returns the origin of the frame after a word of place such as before, above or from, as an argument of a message. */
    public Argument origin() {
        return Words.term(atRunway() ? "drawing.the-threshold" : "drawing.the-hover-point");
    }

    /** Returns the unit of lengths that the drawing is lettered in, metres. */
    public double unitM() {
        return language.usesFeet() ? Lengths.METRES_PER_FOOT : 1;
    }

    /** Returns what that unit is called. */
    public String unitName() {
        return language.usesFeet() ? "ft" : "m";
    }

    /** Returns a length as a number of that unit, without its name. */
    public String number(double metres) {
        return language.fixed(metres / unitM(), language.usesFeet() ? 1 : 2);
    }

    /** Returns the words of a message. */
    public String say(String key, Argument... arguments) {
        return language.render(Message.of(key, arguments));
    }

    /** Returns the id of the element that a unit was read from; empty where it is not in the model. */
    public String elementId(UnitPlan plan) {
        return aid().getUnits().stream().filter(unit -> plan.id().equals(unit.getLabel())).map(LightUnit::getId).findFirst().orElse("");
    }

    /** Returns what the drawings of the aid are called after. */
    public String name() {
        return language.write(ElementNames.of(host())) + ", " + language.write(ElementNames.of(aid()));
    }
}
