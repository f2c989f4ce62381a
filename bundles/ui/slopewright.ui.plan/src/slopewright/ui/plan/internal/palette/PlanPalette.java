package slopewright.ui.plan.internal.palette;

import java.net.URL;
import java.util.List;

import org.eclipse.gef.palette.CreationToolEntry;
import org.eclipse.gef.palette.PaletteDrawer;
import org.eclipse.gef.palette.PaletteRoot;
import org.eclipse.gef.palette.ToolEntry;
import org.eclipse.gef.requests.CreationFactory;
import org.eclipse.jface.resource.ImageDescriptor;

import slopewright.siting.Families;
import slopewright.siting.IndicatorFamily;
import slopewright.standards.RuleSet;
import slopewright.ui.diagram.tools.PanTool;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.plan.internal.Messages;
import slopewright.ui.plan.internal.tools.PlaceTool;
import slopewright.ui.plan.internal.tools.SelectTool;

/** The palette: select, pan, the families that the rule set of the project covers, and an obstacle. */
public final class PlanPalette {

    private static final String UNKNOWN_FAMILY = "family";

    private final ProjectDocument document;
    private final PaletteRoot root = new PaletteRoot();
    private final PaletteDrawer families = new PaletteDrawer(Messages.get("palette.indicators"));
    private List<String> offered = List.of();

    private record Making(Placed placed) implements CreationFactory {

        @Override
        public Object getNewObject() {
            return placed;
        }

        @Override
        public Object getObjectType() {
            return placed.getClass();
        }
    }

    /** Makes the palette of a document. */
    public PlanPalette(ProjectDocument document) {
        this.document = document;
        PaletteDrawer tools = new PaletteDrawer(Messages.get("palette.tools"));
        ToolEntry select = new ToolEntry(Messages.get("palette.select"), Messages.get("palette.select-tip"), icon("select"),
                icon("select"), SelectTool.class) {
            // the class is abstract without need
        };
        tools.add(select);
        tools.add(new ToolEntry(Messages.get("palette.pan"), Messages.get("palette.pan-tip"), icon("pan"), icon("pan"), PanTool.class) {
            // the class is abstract without need
        });
        root.add(tools);
        root.setDefaultEntry(select);
        root.add(families);
        PaletteDrawer site = new PaletteDrawer(Messages.get("palette.site"));
        site.add(entry(Messages.get("palette.obstacle"), Messages.get("palette.obstacle-tip"), "obstacle",
                new Placed.PointObstacle()));
        root.add(site);
        update();
    }

    /** Returns the root for the viewer. */
    public PaletteRoot root() {
        return root;
    }

    /** Offers the families that the rule set of the project covers now; all of them where it is unknown. */
    public void update() {
        List<IndicatorFamily> covered = Families.all().stream().filter(this::covers).toList();
        List<String> keys = covered.stream().map(IndicatorFamily::key).toList();
        if (keys.equals(offered)) {
            return;
        }
        offered = keys;
        for (Object old : families.getChildren().toArray()) {
            families.remove((ToolEntry) old);
        }
        for (IndicatorFamily family : covered) {
            families.add(entry(family.name(), family.name() + ": " + where(family), family.key(), new Placed.Aid(family.key())));
        }
    }

    private boolean covers(IndicatorFamily family) {
        try {
            RuleSet rules = document.rules();
            return rules.covers(family.ruleKey());
        } catch (IllegalArgumentException e) {
            return true;
        }
    }

    private static String where(IndicatorFamily family) {
        if (family.atRunways() && family.atHelipads()) {
            return Messages.get("palette.click-either");
        }
        return Messages.get(family.atRunways() ? "palette.click-runway" : "palette.click-helipad");
    }

    private static ToolEntry entry(String label, String description, String icon, Placed placed) {
        CreationToolEntry entry = new CreationToolEntry(label, description, new Making(placed), icon(icon), icon(icon));
        entry.setToolClass(PlaceTool.class);
        return entry;
    }

    private static ImageDescriptor icon(String name) {
        URL own = PlanPalette.class.getResource("/icons/" + name + ".svg");
        URL url = own == null ? PlanPalette.class.getResource("/icons/" + UNKNOWN_FAMILY + ".svg") : own;
        return url == null ? ImageDescriptor.getMissingImageDescriptor() : ImageDescriptor.createFromURL(url);
    }
}
