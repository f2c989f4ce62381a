package slopewright.ui.plan.internal.outline;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.jface.viewers.ITreeContentProvider;

import slopewright.model.Aerodrome;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachHost;
import slopewright.model.BackgroundImage;
import slopewright.model.Helipad;
import slopewright.model.Identified;
import slopewright.model.LightUnit;
import slopewright.model.Obstacle;
import slopewright.model.Project;
import slopewright.model.Runway;

/** Project, runways and helipads, their ends and directions, aids, units; then obstacles, of many the first thousand, and pictures. */
final class OutlineContent implements ITreeContentProvider {

    private static final int MOST = 1000;

    @Override
    public Object[] getElements(Object input) {
        return ((List<?>) input).toArray();
    }

    @Override
    public Object[] getChildren(Object parent) {
        if (parent instanceof Project project) {
            return project.getAerodrome() == null ? new Object[0] : children(project.getAerodrome());
        }
        if (parent instanceof Runway runway) {
            return runway.getEnds().toArray();
        }
        if (parent instanceof Helipad pad) {
            return pad.getDirections().toArray();
        }
        if (parent instanceof ApproachHost host) {
            return host.getAids().toArray();
        }
        if (parent instanceof ApproachAid aid) {
            return aid.getUnits().toArray();
        }
        return parent instanceof OutlineGroup group ? members(group) : new Object[0];
    }

    private static Object[] children(Aerodrome aerodrome) {
        List<Object> children = new ArrayList<>(aerodrome.getRunways());
        children.addAll(aerodrome.getHelipads());
        if (!aerodrome.getObstacles().isEmpty()) {
            children.add(new OutlineGroup(OutlineGroup.Kind.OBSTACLES, aerodrome));
        }
        if (!aerodrome.getBackgroundImages().isEmpty()) {
            children.add(new OutlineGroup(OutlineGroup.Kind.IMAGES, aerodrome));
        }
        return children.toArray();
    }

    private static Object[] members(OutlineGroup group) {
        if (group.kind() == OutlineGroup.Kind.IMAGES) {
            return group.aerodrome().getBackgroundImages().toArray();
        }
        List<Obstacle> all = group.aerodrome().getObstacles();
        List<Object> shown = new ArrayList<>(all.subList(0, Math.min(MOST, all.size())));
        if (all.size() > MOST) {
            shown.add(new OutlineGroup.More(all.size() - MOST));
        }
        return shown.toArray();
    }

    @Override
    public Object getParent(Object element) {
        if (element instanceof Obstacle obstacle && obstacle.eContainer() instanceof Aerodrome aerodrome) {
            return new OutlineGroup(OutlineGroup.Kind.OBSTACLES, aerodrome);
        }
        if (element instanceof BackgroundImage image && image.eContainer() instanceof Aerodrome aerodrome) {
            return new OutlineGroup(OutlineGroup.Kind.IMAGES, aerodrome);
        }
        if (element instanceof OutlineGroup group) {
            return group.aerodrome().eContainer();
        }
        if (element instanceof Identified child) {
            return child.eContainer() instanceof Aerodrome aerodrome ? aerodrome.eContainer() : child.eContainer();
        }
        return null;
    }

    @Override
    public boolean hasChildren(Object element) {
        return !(element instanceof LightUnit) && !(element instanceof Obstacle) && getChildren(element).length > 0;
    }

    /** Returns the node that stands for an element: itself, or where it is not listed what stands in its place. */
    Object shownFor(Identified element) {
        if (element instanceof Obstacle obstacle && obstacle.eContainer() instanceof Aerodrome aerodrome
                && aerodrome.getObstacles().indexOf(obstacle) >= MOST) {
            return new OutlineGroup(OutlineGroup.Kind.OBSTACLES, aerodrome);
        }
        return element;
    }
}
