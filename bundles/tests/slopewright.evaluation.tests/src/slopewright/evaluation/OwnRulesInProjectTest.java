package slopewright.evaluation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.model.ApproachAid;
import slopewright.model.Project;
import slopewright.model.util.Projects;
import slopewright.standards.CitedValue;
import slopewright.standards.OwnRuleSets;
import slopewright.standards.Provenance;
import slopewright.standards.RuleSet;
import slopewright.standards.RuleSets;

/** A project and its aids under an organisation's own rule set, in the folder that the project names. Every name is invented. */
class OwnRulesInProjectTest {
    private static final String SPACING = "four-unit-row.unit-spacing-m";

    private final ApproachAid aid = TrialSite.runway("four-unit-row").aid();
    private final Project project = Projects.project(aid).orElseThrow();
    private Path own;

    /** The starting point over icao:9th, with 8 m where Fig 5-19 prints 9 m. */
    @BeforeEach
    void write(@TempDir Path folder) throws IOException {
        own = Files.createDirectories(folder.resolve("own"));
        for (Map.Entry<String, String> file : OwnRuleSets.template(RuleSets.find("icao:9th").orElseThrow()).entrySet()) {
            Files.writeString(own.resolve(file.getKey()), file.getValue().replace("## " + SPACING + ",9,", SPACING + ",8,"));
        }
        project.setRuleSetFolder(own.toString());
    }

    @Test
    void theProjectIsJudgedByItsOwnRuleSet() {
        project.setRuleSetKey("our-own:1");
        RuleSet rules = ProjectRules.of(project, Optional.empty());
        CitedValue spacing = rules.value(SPACING);
        assertEquals(8, spacing.value());
        assertEquals(Provenance.ORGANISATION, spacing.citation().provenance());
        assertEquals(Provenance.PUBLISHED, rules.value("four-unit-row.transition-width-min").citation().provenance(), "what lies below");
    }

    @Test
    void anAidMayNameItWhileTheProjectDoesNot() {
        project.setRuleSetKey("icao:9th");
        aid.setRuleSetKey("our-own");
        assertEquals(8, AidEvaluation.of(aid).rules().value(SPACING).value());
        assertEquals(9, ProjectRules.of(project, Optional.empty()).value(SPACING).value());
        assertTrue(ProjectRules.own(project).isPresent());
    }

    @Test
    void aDamagedOneIsRefusedWithFileAndLine() throws IOException {
        Files.writeString(own.resolve("values.csv"), Files.readString(own.resolve("values.csv")).replace(SPACING + ",8,", SPACING + ",x,"));
        project.setRuleSetKey("our-own:1");
        String said = assertThrows(IllegalArgumentException.class, () -> ProjectRules.of(project, Optional.empty())).getMessage();
        assertTrue(said.matches(".*values\\.csv:\\d+: .*"), said);
        project.setRuleSetFolder(null);
        assertThrows(IllegalArgumentException.class, () -> ProjectRules.of(project, Optional.empty()));
    }
}
