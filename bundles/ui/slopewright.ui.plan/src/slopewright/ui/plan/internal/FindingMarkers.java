package slopewright.ui.plan.internal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.ImageFigure;
import org.eclipse.draw2d.Label;
import org.eclipse.draw2d.geometry.Dimension;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.jface.resource.ResourceManager;

import slopewright.checks.CheckResult;
import slopewright.checks.Outcome;
import slopewright.drawing.scene.ScenePoint;
import slopewright.model.Identified;
import slopewright.model.util.Ids;
import slopewright.ui.Images;
import slopewright.ui.MessageTexts;
import slopewright.ui.diagram.parts.DiagramRootPart;
import slopewright.ui.diagram.parts.ElementPart;
import slopewright.ui.properties.OutcomeTexts;

/**
 * Marks beside elements about which rules find something: an octagon for what is not met, else a triangle for what is to be cleared up.
 * One mark stands for all findings about an element and of those below it that are not shown themselves.
 */
public final class FindingMarkers {

    private static final int MOST_LINES = 6;

    private final PlanContext context;
    private final ResourceManager resources;
    private final Map<ElementPart<?>, ImageFigure> markers = new LinkedHashMap<>();

    /** Makes the markers of a plan. */
    public FindingMarkers(PlanContext context) {
        this.context = context;
        this.resources = new LocalResourceManager(JFaceResources.getResources(), context.diagram().viewer().getControl());
        root().placeSigns(this::place);
    }

    /** Shows what a check has found, instead of what was shown before. */
    public void show(CheckResult result) {
        clear();
        Map<String, Identified> elements = new HashMap<>();
        Ids.elements(context.project()).forEach(element -> elements.put(element.getId(), element));
        Map<ElementPart<?>, List<Outcome>> byPart = new LinkedHashMap<>();
        for (Outcome outcome : result.findings().stream().sorted(OutcomeTexts.worstFirst()).toList()) {
            Optional.ofNullable(elements.get(outcome.elementId())).flatMap(this::part)
                    .ifPresent(part -> byPart.computeIfAbsent(part, key -> new ArrayList<>()).add(outcome));
        }
        byPart.forEach(this::mark);
        root().arrangeLabels();
    }

    private Optional<ElementPart<?>> part(Identified element) {
        for (EObject shown = element; shown != null; shown = shown.eContainer()) {
            if (context.diagram().viewer().getEditPartRegistry().get(shown) instanceof ElementPart<?> part && part.anchor().isPresent()) {
                return Optional.of(part);
            }
        }
        return Optional.empty();
    }

    private void mark(ElementPart<?> part, List<Outcome> outcomes) {
        ImageFigure figure = new ImageFigure(Images.of(outcomes.get(0).verdict()).image(resources));
        figure.setToolTip(new Label(text(outcomes)));
        markers.put(part, figure);
        layer().add(figure);
    }

    private static String text(List<Outcome> outcomes) {
        StringBuilder text = new StringBuilder();
        for (Outcome outcome : outcomes.subList(0, Math.min(MOST_LINES, outcomes.size()))) {
            text.append(text.isEmpty() ? "" : "\n").append(outcome.rule()).append("  ").append(MessageTexts.of(outcome.title()));
            text.append(": ").append(OutcomeTexts.verdict(outcome));
            text.append(outcome.missing().isEmpty() ? "" : Messages.get("findings.missing", MessageTexts.list(outcome.missing())));
        }
        if (outcomes.size() > MOST_LINES) {
            text.append(Messages.get("findings.more", outcomes.size() - MOST_LINES));
        }
        return text.toString();
    }

    private void place() {
        List<Rectangle> taken = new ArrayList<>();
        markers.forEach((part, figure) -> {
            Optional<ScenePoint> place = part.isActive() ? part.signPlace() : Optional.empty();
            figure.setVisible(place.isPresent());
            place.ifPresent(at -> {
                Dimension size = figure.getPreferredSize();
                int x = (int) Math.round(context.diagram().view().toX(at.x()) - size.width / 2.0);
                int y = (int) Math.round(context.diagram().view().toY(at.y()) - size.height / 2.0);
                Rectangle box = new Rectangle(new Point(x, y), size);
                figure.setBounds(box);
                figure.setVisible(taken.stream().noneMatch(box::intersects));
                taken.add(box);
            });
        });
    }

    /** Returns how many elements are marked. */
    public int count() {
        return markers.size();
    }

    /** Takes all marks away. */
    public void clear() {
        markers.values().forEach(layer()::remove);
        markers.clear();
    }

    private DiagramRootPart root() {
        return (DiagramRootPart) context.diagram().viewer().getRootEditPart();
    }

    private IFigure layer() {
        return context.diagram().layer(PlanLayer.REMARKS);
    }
}
