package slopewright.evaluation.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import slopewright.model.ApproachAid;
import slopewright.model.EquipmentType;
import slopewright.model.Helipad;
import slopewright.model.Identified;
import slopewright.model.Project;
import slopewright.model.util.Projects;
import slopewright.model.util.ValueRange;
import slopewright.siting.Families;

/** The templates and the kinds of portable unit. */
class SiteTemplateTest {

    private static Project begun(SiteTemplate template) {
        NewSite site = new NewSite("icao:9th");
        site.start(template);
        site.setName("Alder field");
        site.set(SiteNumber.GROUND_SPEED, OptionalDouble.of(60));
        site.set(SiteNumber.DESCENT, OptionalDouble.of(640));
        return site.laidOut(SiteNames.english("1"), site.familyKey().orElse("four-unit-row"));
    }

    @ParameterizedTest
    @EnumSource
    void everyTemplateIsLaidOutWithoutAPlaceOfItsOwn(SiteTemplate template) {
        Project project = begun(template);
        ApproachAid aid = Projects.aids(project).get(0);
        assertFalse(aid.getUnits().isEmpty());
        assertEquals(template == SiteTemplate.FIELD_SITE, Boolean.TRUE.equals(aid.getPortable()));
        assertTrue(project.getReviewNotes().isEmpty(), "what is assumed is in the remarks");
        assertNull(project.getAerodrome().getLatitudeDeg());
        assertEquals(template, SiteTemplate.find(template.key()).orElseThrow());
    }

    /** 60 kt are 60 x 101.2686 = 6076.1 ft/min over the ground, and 640 ft/min of them atan(0.105331) = 6.01 degrees. */
    @Test
    void thePlannedDescentIsTheSlopeOfTheFieldSite() {
        Project project = begun(SiteTemplate.FIELD_SITE);
        ApproachAid aid = Projects.aids(project).get(0);
        assertEquals(6.01, aid.getSlopeDeg(), 0.005);
        assertEquals(60, aid.getGroundSpeedKt());
        assertTrue(project.getAerodrome().getCircuits().get(0).getAids().contains(aid), "the battery");
    }

    /** A designator that names a bearing names that of the site; any other is kept. */
    @Test
    void theDesignatorFollowsTheBearing() {
        NewSite site = new NewSite("icao:9th");
        site.start(SiteTemplate.FIELD_SITE);
        site.set(SiteNumber.BEARING, OptionalDouble.of(250.4));
        assertEquals("H-250", Projects.hosts(site.project(SiteNames.english("1"))).get(0).getDesignator());
        site.setDesignator("from the lake");
        assertEquals("from the lake", Projects.hosts(site.project(SiteNames.english("1"))).get(0).getDesignator());
    }

    /** What is another number than the one of the template is assumed no longer. */
    @Test
    void whatIsAssumedIsSaidUntilItIsReplaced() {
        NewSite site = new NewSite("icao:9th");
        site.start(SiteTemplate.FIELD_SITE);
        Helipad as = site.project(SiteNames.english("1")).getAerodrome().getHelipads().get(0);
        assertTrue(as.getRemarks().contains("FATO length"), as.getRemarks());
        assertTrue(site.isAssumed(SiteNumber.FATO));
        site.set(SiteNumber.FATO, OptionalDouble.of(28));
        Helipad measured = site.project(SiteNames.english("1")).getAerodrome().getHelipads().get(0);
        assertFalse(measured.getRemarks().contains("FATO length"), measured.getRemarks());
        assertTrue(measured.getRemarks().contains("Hover height"), measured.getRemarks());
        assertFalse(site.isAssumed(SiteNumber.FATO));
        assertEquals(28 + 42 - 30, measured.getSafetyAreaWidthM(), 1e-9, "as far around it as in the template");
    }

    @ParameterizedTest
    @EnumSource
    void everyKindIsASampleThatHangsNowhere(UnitKind kind) {
        EquipmentType sample = kind.sample();
        assertNull(sample.getId());
        assertNull(sample.eContainer());
        assertNull(sample.getDataSource(), "the sheet of the unit in hand is asked for");
        assertTrue(sample.getRemarks().contains("to be confirmed"), sample.getRemarks());
        assertTrue(Families.find(sample.getFamilyKey()).isPresent());
        assertFalse(sample.getSectors().isEmpty());
        assertEquals(3, sample.getBrightnessLevels().size());
        assertEquals(kind, UnitKind.find(kind.key()).orElseThrow());
    }

    /** One truth: the unit of the field site is the sample of its kind. */
    @Test
    void theUnitOfTheFieldSiteIsTheSampleOfItsKind() {
        EquipmentType own = SiteTemplate.FIELD_SITE.project().getAerodrome().getEquipmentTypes().get(0);
        EquipmentType bare = EcoreUtil.copy(own);
        bare.setId(null);
        bare.eAllContents().forEachRemaining(part -> ((Identified) part).setId(null));
        assertTrue(EcoreUtil.equals(bare, UnitKind.THREE_COLOUR_BOX.sample()));
    }

    /** Each figure that is assumed has a name for people. */
    @ParameterizedTest
    @EnumSource
    void whatIsAssumedHasAName(SiteTemplate template) {
        Project project = template.project();
        List<SiteTemplate.Assumption> assumed = SiteTemplate.assumptions(project);
        assertEquals(template.isPad(), !assumed.isEmpty());
        for (SiteTemplate.Assumption part : assumed) {
            assertFalse(part.features().isEmpty(), part.elementId());
            part.features().forEach(feature -> assertTrue(ValueRange.of(feature.getEContainingClass(), feature).isPresent(),
                    feature.getName()));
        }
    }
}
