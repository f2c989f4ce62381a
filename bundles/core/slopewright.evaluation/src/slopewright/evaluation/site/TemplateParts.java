package slopewright.evaluation.site;

import java.util.List;
import java.util.Objects;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.util.EcoreUtil;

import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.Aerodrome;
import slopewright.model.Circuit;
import slopewright.model.Helipad;
import slopewright.model.Identified;
import slopewright.model.Named;
import slopewright.model.ObstacleSurvey;
import slopewright.model.Project;
import slopewright.model.util.Ids;
import slopewright.model.util.ValueRange;

/** Takes over from a template what is of no place. */
final class TemplateParts {
    private final Project template;
    private final SiteNames names;

    TemplateParts(Project template, SiteNames names) {
        this.template = template;
        this.names = names;
    }

    /** Takes over the equipment, and of a template of the product its stage, its battery, its survey and what it only assumes. */
    void takeOver(Project project) {
        Aerodrome aerodrome = project.getAerodrome();
        template.getAerodrome().getEquipmentTypes().forEach(type -> aerodrome.getEquipmentTypes().add(EcoreUtil.copy(type)));
        List<SiteTemplate.Assumption> assumed = SiteTemplate.assumptions(template);
        if (assumed.isEmpty()) {
            return;
        }
        project.setStage(template.getStage());
        template.getAerodrome().getCircuits().forEach(circuit -> {
            Circuit copy = EcoreUtil.copy(circuit);
            copy.setName(copy.getCapacityAh() == null ? names.supply() : names.battery());
            copy.getAids().clear();
            aerodrome.getCircuits().add(copy);
        });
        aerodrome.getHelipads().forEach(pad -> surveys(aerodrome, pad));
        for (SiteTemplate.Assumption part : assumed) {
            Identified said = Ids.find(template, part.elementId()).orElseThrow();
            aerodrome.eAllContents().forEachRemaining(found -> {
                if (found instanceof Named named && found.eClass() == said.eClass()) {
                    remark(named, part.features().stream().filter(feature -> Objects.equals(found.eGet(feature), said.eGet(feature)))
                            .toList());
                }
            });
        }
    }

    private void surveys(Aerodrome aerodrome, Helipad pad) {
        for (ObstacleSurvey survey : template.getAerodrome().getObstacleSurveys()) {
            ObstacleSurvey copy = EcoreUtil.copy(survey);
            copy.setName(names.survey());
            copy.getHosts().clear();
            copy.getHosts().addAll(pad.getDirections());
            aerodrome.getObstacleSurveys().add(copy);
        }
    }

    /** Says in the remarks of an element what of it is assumed. */
    private void remark(Named element, List<EAttribute> features) {
        if (!features.isEmpty()) {
            element.setRemarks(names.words().apply(Message.of("site.assumed", Words.list(features.stream().flatMap(feature -> ValueRange
                    .of(element.eClass(), feature).stream()).map(range -> Words.term("feature." + range.key())).toList()))));
        }
    }
}
