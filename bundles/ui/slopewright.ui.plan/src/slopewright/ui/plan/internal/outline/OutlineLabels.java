package slopewright.ui.plan.internal.outline;

import java.net.URL;
import java.util.HashMap;
import java.util.Map;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.preference.JFacePreferences;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.jface.resource.ResourceManager;
import org.eclipse.jface.viewers.DelegatingStyledCellLabelProvider.IStyledLabelProvider;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.jface.viewers.StyledString;
import org.eclipse.swt.graphics.Image;

import slopewright.checks.CheckResult;
import slopewright.checks.Outcome;
import slopewright.checks.Verdict;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachHost;
import slopewright.model.Helipad;
import slopewright.model.Identified;
import slopewright.model.LightUnit;
import slopewright.model.Obstacle;
import slopewright.model.Project;
import slopewright.model.Runway;
import slopewright.model.util.Ids;
import slopewright.ui.MessageTexts;
import slopewright.ui.plan.internal.Messages;

/**
 * Names the nodes of the outline. Behind an element stands how many findings there are about it and what it contains: a cross for what is
 * not met, and a question mark for what is to be cleared up.
 */
final class OutlineLabels extends LabelProvider implements IStyledLabelProvider {

    private static final StyledString.Styler NOT_MET = StyledString.createColorRegistryStyler(JFacePreferences.ERROR_COLOR, null);

    private final ResourceManager resources;
    private Map<EObject, int[]> findings = Map.of();

    OutlineLabels(ResourceManager resources) {
        this.resources = resources;
    }

    /** Takes the findings of a check: of each element those about it and about what it contains. */
    void take(Project project, CheckResult result) {
        Map<String, Identified> elements = new HashMap<>();
        Map<EObject, int[]> counts = new HashMap<>();
        if (!result.findings().isEmpty()) {
            Ids.elements(project).forEach(element -> elements.put(element.getId(), element));
        }
        for (Outcome outcome : result.findings()) {
            int kind = outcome.verdict() == Verdict.NOT_MET ? 0 : 1;
            for (EObject holder = elements.get(outcome.elementId()); holder != null; holder = holder.eContainer()) {
                counts.computeIfAbsent(holder, key -> new int[2])[kind]++;
            }
        }
        findings = counts;
    }

    /** Forgets all findings. */
    void forget() {
        findings = Map.of();
    }

    @Override
    public StyledString getStyledText(Object node) {
        StyledString text = new StyledString(getText(node));
        int[] counts = findings.getOrDefault(node, new int[2]);
        append(text, "✕", counts[0], NOT_MET);
        append(text, "?", counts[1], StyledString.QUALIFIER_STYLER);
        return text;
    }

    private static void append(StyledString text, String sign, int count, StyledString.Styler style) {
        if (count > 0) {
            text.append("  " + sign + count, style);
        }
    }

    @Override
    public String getText(Object node) {
        if (node instanceof OutlineGroup group) {
            return group.kind() == OutlineGroup.Kind.IMAGES ? Messages.get("outline.images")
                    : Messages.get("outline.obstacles", group.aerodrome().getObstacles().size());
        }
        if (node instanceof OutlineGroup.More more) {
            return Messages.get("outline.more", more.count());
        }
        if (node instanceof ApproachHost host) {
            return Messages.get("outline.host", String.valueOf(host.getDesignator()));
        }
        if (node instanceof Runway runway) {
            return Messages.get("outline.runway", String.valueOf(runway.getDesignator()));
        }
        if (node instanceof LightUnit unit) {
            return Messages.get("tip.unit", String.valueOf(unit.getLabel()));
        }
        return node instanceof Identified element ? MessageTexts.label(element) : String.valueOf(node);
    }

    @Override
    public Image getImage(Object node) {
        String name = "obstacle";
        if (node instanceof Project) {
            name = "plan";
        } else if (node instanceof Runway || node instanceof ApproachHost) {
            name = "runway";
        } else if (node instanceof Helipad) {
            name = "helipad";
        } else if (node instanceof ApproachAid aid) {
            name = String.valueOf(aid.getFamilyKey());
        } else if (node instanceof LightUnit) {
            name = "unit";
        } else if (node instanceof OutlineGroup.More || !(node instanceof Obstacle) && !isObstacles(node)) {
            name = "picture";
        }
        URL own = OutlineLabels.class.getResource("/icons/" + name + ".svg");
        URL url = own == null ? OutlineLabels.class.getResource("/icons/family.svg") : own;
        return url == null || node instanceof OutlineGroup.More ? null : resources.get(ImageDescriptor.createFromURL(url));
    }

    private static boolean isObstacles(Object node) {
        return node instanceof OutlineGroup group && group.kind() == OutlineGroup.Kind.OBSTACLES;
    }
}
