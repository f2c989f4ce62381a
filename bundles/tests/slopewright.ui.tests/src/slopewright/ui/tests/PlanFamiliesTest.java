package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.eclipse.swt.graphics.Point;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.edit.SetAttribute;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachDirection;
import slopewright.model.ApproachHost;
import slopewright.model.RunwayEnd;
import slopewright.model.SlopewrightPackage.Literals;
import slopewright.siting.Families;
import slopewright.siting.IndicatorFamily;
import slopewright.standards.RuleSet;
import slopewright.testkit.DemoProjects;
import slopewright.ui.document.ProjectInput;
import slopewright.ui.plan.PlanEditor;

/** Every family of the palette is placed with the mouse under a rule set that covers it. */
class PlanFamiliesTest {

    @TempDir
    private Path folder;
    private PlanEditor editor;
    private PlanDriver plan;

    @BeforeEach
    void open() throws Exception {
        Path file = DemoProjects.copy("harrow-vale", folder);
        editor = (PlanEditor) page().openEditor(new ProjectInput(file), PlanEditor.ID);
        plan = new PlanDriver(editor);
        Patience.await("the plan has a size", () -> editor.view().widthPx() > 0);
    }

    @AfterEach
    void close() {
        page().closeEditor(editor, false);
    }

    private static IWorkbenchPage page() {
        return PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
    }

    @Test
    void everyFamilyIsPlacedWithTheMouse() {
        RunwayEnd small = plan.element("runway-end-4", RunwayEnd.class);
        RunwayEnd large = plan.element("runway-end-2", RunwayEnd.class);
        ApproachDirection pad = plan.element("approach-direction-1", ApproachDirection.class);
        plan.document().history().perform(SetAttribute.of(pad, Literals.APPROACH_HOST__DESIRED_SLOPE_DEG, 6.0));
        Map<String, String> open = new LinkedHashMap<>();
        Families.all().forEach(family -> open.put(family.key(), "no rule set covers it"));
        for (String key : List.of("icao:5th", "icao:9th", "easa", "faa", "casa")) {
            plan.document().history().perform(SetAttribute.of(plan.document().project(), Literals.PROJECT__RULE_SET_KEY, key));
            RuleSet rules = plan.document().rules();
            for (IndicatorFamily family : Families.all()) {
                if (open.containsKey(family.key()) && rules.covers(family.ruleKey())) {
                    assertTrue(plan.tools().contains(family.name()), family.name() + " is offered under " + key);
                    ApproachHost host = family.atRunways() ? family.key().startsWith("t-form") ? large : small : pad;
                    String problem = place(family, host);
                    open.put(family.key(), key + ": " + problem);
                    if (problem.isEmpty()) {
                        open.remove(family.key());
                    }
                }
            }
        }
        assertEquals(Map.of(), open);
    }

    /** Clicks beside the threshold or at the pad; returns the notice where nothing was placed. */
    private String place(IndicatorFamily family, ApproachHost host) {
        int before = host.getAids().size();
        plan.lookAt(host, 1);
        Point at = plan.at(host);
        Point beside = host instanceof RunwayEnd ? new Point(at.x + 60, at.y + 60) : new Point(at.x + 12, at.y + 12);
        plan.chooseTool(family.name());
        plan.move(beside);
        String shown = plan.readoutText();
        plan.click(beside);
        if (host.getAids().size() == before) {
            return editor.notice() + " / " + shown;
        }
        ApproachAid placed = host.getAids().get(before);
        assertEquals(family.key(), placed.getFamilyKey());
        assertTrue(family.unitCounts().contains(placed.getUnits().size()) || !placed.getUnits().isEmpty(), family.key());
        assertTrue(plan.part(placed).isPresent(), "it is drawn");
        placed.getUnits().forEach(unit -> assertTrue(plan.part(unit).orElseThrow().anchor().isPresent()));
        editor.viewer().getEditDomain().getCommandStack().undo();
        assertEquals(before, host.getAids().size());
        return "";
    }
}
