package slopewright.checks.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import slopewright.checks.Findings;
import slopewright.checks.Findings.Measure;
import slopewright.checks.Outcome;
import slopewright.checks.Severity;
import slopewright.checks.field.ObstacleField;
import slopewright.geometry.Penetration;
import slopewright.geometry.ProtectionSurface;
import slopewright.model.Identified;
import slopewright.model.Obstacle;
import slopewright.model.util.Projects;
import slopewright.siting.Siting;
import slopewright.siting.SitingRequest;
import slopewright.siting.SurfacePlan;
import slopewright.siting.remedy.Remedies;
import slopewright.siting.remedy.Remedy;
import slopewright.siting.remedy.SurveyedShape;
import slopewright.standards.Citation;
import slopewright.standards.CitedValue;

/** Nothing stands above the obstacle protection surface. */
public final class ObstacleSurfaceRule extends AidRule {

    /** Made by the service loader. */
    public ObstacleSurfaceRule() {
        super("OBS-01", "Obstacle surface",
                "No obstacle rises above the obstacle surface of the indicator unless it is shielded; its survey accuracy is added on the"
                + " safe side.",
                Severity.FAIL, ALL);
    }

    @Override
    void check(AidFacts facts, Findings findings) {
        SurfacePlan plan = Obstacles.surface(facts);
        ProtectionSurface surface = plan.geometry();
        Citation citation = Obstacles.citation(plan);
        ObstacleField field = Obstacles.of(facts);
        for (ObstacleField.Broken one : field.broken()) {
            findings.notEvaluated(one.obstacle(), List.of(one.reason()), "Not compared with the obstacle surface of "
                    + Projects.label(facts.aid()) + ": " + one.reason() + ".");
        }
        List<SurveyedShape> counted = new ArrayList<>();
        double worst = Double.NEGATIVE_INFINITY;
        int inside = field.compare(surface).size();
        boolean toConfirm = Obstacles.isToConfirm(citation, facts.rules());
        Kept key = new Kept(facts.aid().getId(), Projects.label(facts.aid()), surface, citation, toConfirm);
        findings.addAll(field.kept(key, () -> each(facts, field.compare(surface), citation, toConfirm)));
        for (ObstacleField.Compared one : field.compare(surface)) {
            if (!one.placed().isShielded()) {
                counted.add(one.placed().shape());
                worst = Math.max(worst, one.worst().excessM());
            }
        }
        String seen = field.count() + " obstacles, " + inside + " of them within the surface";
        if (worst == Double.NEGATIVE_INFINITY) {
            findings.decide(facts.aid(), true, citation, seen + ", none that counts.");
            return;
        }
        Measure measure = Measure.atMost(worst, 0, "m");
        String remedies = measure.isMet() ? ""
                : field.kept(new Cures(key, facts.laid(), facts.request(), facts.rules().key()), () -> remedies(facts, counted));
        add(findings, toConfirm, facts.aid(), measure, citation, seen + "; the governing one stands " + Words.m(Math.abs(worst))
                + (worst > 0 ? " above. " + remedies : " below."));
    }

    /** What decides the findings of the obstacles, beside the obstacles. */
    private record Kept(String aidId, String aidLabel, ProtectionSurface surface, Citation citation, boolean toConfirm) {
    }

    /** What decides the remedies, beside the obstacles. */
    private record Cures(Kept found, Siting laid, SitingRequest request, String rules) {
    }

    private List<Outcome> each(AidFacts facts, List<ObstacleField.Compared> inside, Citation citation, boolean toConfirm) {
        Findings each = new Findings(this);
        inside.forEach(one -> one(each, facts, one, citation, toConfirm));
        return each.outcomes();
    }

    private void one(Findings findings, AidFacts facts, ObstacleField.Compared compared, Citation citation, boolean toConfirm) {
        ObstacleField.Placed one = compared.placed();
        Penetration found = compared.worst();
        double top = found.point().heightM();
        String text = one.label() + ", its survey accuracy added, stands " + Words.m(Math.abs(found.excessM()))
                + (found.excessM() > 0 ? " above" : " below") + " the surface of " + Projects.label(facts.aid()) + ", "
                + Words.m(-found.point().alongM()) + " before the threshold.";
        if (one.isShielded() && found.excessM() > 0) {
            findings.decide(one.obstacle(), true, citation, text
                    + " It is marked as shielded by an existing immovable object and accepted.");
            return;
        }
        Measure measure = Measure.atMost(top, found.limitM(), "m");
        add(findings, toConfirm, one.obstacle(), measure, citation, measure.isMet() ? text : text + " " + wording(one.obstacle()));
    }

    /** Adds a comparison; the datum of the surface decides it as much as its dimensions do. */
    private void add(Findings findings, boolean toConfirm, Identified element, Measure measure, Citation citation, String explanation) {
        findings.compare(element, measure, Optional.of(citation), toConfirm, explanation, severity());
    }

    private static String wording(Obstacle obstacle) {
        return Boolean.TRUE.equals(obstacle.getTemporary())
                ? "A new object like this must not stand there unless it is shielded: refuse or lower it, or take the indicator out of use"
                + " meanwhile."
                : "A new object is not allowed unless shielded; an existing one is removed or lowered unless it is shielded or a study"
                + " finds no harm.";
    }

    private static String remedies(AidFacts facts, List<SurveyedShape> counted) {
        List<Remedy> remedies = Remedies.of(facts.laid(), facts.request(), facts.rules(), counted);
        double reading = facts.rules().find("obstacle.upwind-remedy").map(CitedValue::value).orElse(0.0);
        List<String> texts = new ArrayList<>();
        for (Remedy remedy : remedies) {
            boolean first = remedy.kind() == Remedy.Kind.MOVE_UPWIND_BY_CROSSING_HEIGHT && reading == 1;
            boolean second = remedy.kind() == Remedy.Kind.MOVE_UPWIND_UNTIL_CLEAR && reading == 2;
            texts.add(remedy.text() + (first || second ? " (the reading of this rule set)" : ""));
        }
        return "Remove or lower what penetrates, or: " + String.join("; ", texts) + ".";
    }
}
