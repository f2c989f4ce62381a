package slopewright.edit;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;

import slopewright.edit.internal.UnitPlaces;
import slopewright.evaluation.Proposals;
import slopewright.messages.Message;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachHost;
import slopewright.model.LightUnit;
import slopewright.model.Project;
import slopewright.model.util.Ids;
import slopewright.model.util.Projects;
import slopewright.siting.SitingException;
import slopewright.standards.RuleSet;

/**
 * Copies an aid to another runway end or approach direction: laid out anew for it, or in the same geometry, which is the mirror image on
 * the other end of the same runway. Choices go with it; measured values and inspections do not, because they belong to the original.
 */
public final class CopyAid extends RecordedEdit {

    private final ApproachAid aid;
    private final ApproachHost target;
    private final Optional<RuleSet> rules;
    private ApproachAid copy;

    private CopyAid(String label, ApproachAid aid, ApproachHost target, Optional<RuleSet> rules) {
        super(label);
        this.aid = aid;
        this.target = target;
        this.rules = rules;
    }

    /**
     * Copies an aid and lays the copy out anew from the runway end, the aeroplanes and the slope of its new place.
     *
     * @param aid    the aid
     * @param target where the copy goes
     * @param rules  the rule set that lays it out
     * @return the edit; carrying it out throws a {@link SitingException} where no layout can be made there, with the reason
     */
    public static CopyAid solved(ApproachAid aid, ApproachHost target, RuleSet rules) {
        return new CopyAid("Copy aid to " + target.getDesignator() + ", laid out anew", aid, target, Optional.of(rules));
    }

    /**
     * Copies an aid in the same geometry: distances from the threshold and the centre line, settings, and lens heights relative to the
     * threshold stay.
     *
     * @param aid    the aid
     * @param target where the copy goes
     * @return the edit; carrying it out throws a {@link SitingException} where an elevation is missing
     */
    public static CopyAid sameGeometry(ApproachAid aid, ApproachHost target) {
        return new CopyAid("Copy aid to " + target.getDesignator() + ", same geometry", aid, target, Optional.empty());
    }

    /** Returns the other end of the runway of an element, empty where it has none. */
    public static Optional<ApproachHost> otherEnd(EObject element) {
        Optional<ApproachHost> host = Projects.host(element);
        return Projects.runway(element).stream().flatMap(runway -> runway.getEnds().stream()).map(ApproachHost.class::cast)
                .filter(end -> host.isPresent() && end != host.get()).findFirst();
    }

    /** Returns the copy, empty before the edit was carried out. */
    public Optional<ApproachAid> made() {
        return Optional.ofNullable(copy);
    }

    @Override
    protected Collection<? extends EObject> scope() {
        return List.of(target);
    }

    @Override
    protected void apply() {
        Project project = Projects.project(target).orElseThrow(() -> new EditException(Message.said("edit.no-project",
                Projects.label(target))));
        ApproachHost source = Projects.host(aid).orElseThrow(() -> new EditException(Message.of("edit.no-host")));
        if (source == target) {
            throw new EditException(Message.said("edit.there-already", Projects.label(aid)));
        }
        ApproachAid made = EcoreUtil.copy(aid);
        Ids.elements(made).forEach(element -> element.setId(null));
        made.getInspections().clear();
        made.setName(renamed(source));
        if (rules.isPresent()) {
            made.setSlopeDeg(target.getDesiredSlopeDeg() == null ? aid.getSlopeDeg() : target.getDesiredSlopeDeg());
            target.getAids().add(made);
            made.setSlopeDeg(Proposals.layOutLike(made, rules.get(), aid).slopeDeg());
        } else {
            double rise = AddAid.datumM(target) - AddAid.datumM(source);
            made.getUnits().forEach(unit -> raise(unit, rise));
            target.getAids().add(made);
        }
        Ids.assign(made, project);
        copy = made;
    }

    private static void raise(LightUnit unit, double byM) {
        unit.setMeasured(null);
        if (unit.getLensElevationM() != null) {
            unit.setLensElevationM(UnitPlaces.rounded(unit.getLensElevationM() + byM));
        }
    }

    /** Names the new end where the name names the old one. */
    private String renamed(ApproachHost source) {
        String name = aid.getName();
        if (name == null || source.getDesignator() == null || target.getDesignator() == null) {
            return name;
        }
        Pattern old = Pattern.compile("\\b" + Pattern.quote(source.getDesignator()) + "\\b");
        return old.matcher(name).replaceAll(Matcher.quoteReplacement(target.getDesignator()));
    }
}
