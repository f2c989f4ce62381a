package slopewright.ui.plan.internal.palette;

import java.net.URL;
import java.util.List;
import java.util.function.Supplier;

import org.eclipse.gef.Tool;
import org.eclipse.gef.palette.CombinedTemplateCreationEntry;
import org.eclipse.gef.palette.MarqueeToolEntry;
import org.eclipse.gef.palette.PaletteDrawer;
import org.eclipse.gef.palette.PaletteRoot;
import org.eclipse.gef.palette.ToolEntry;
import org.eclipse.gef.requests.CreationFactory;
import org.eclipse.jface.resource.ImageDescriptor;

import slopewright.siting.Families;
import slopewright.siting.IndicatorFamily;
import slopewright.standards.RuleSet;
import slopewright.ui.MessageTexts;
import slopewright.ui.diagram.tools.PanTool;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.plan.internal.Messages;
import slopewright.ui.plan.internal.PlanContext;
import slopewright.ui.plan.internal.tools.DrawTool;
import slopewright.ui.plan.internal.tools.MeasureTool;
import slopewright.ui.plan.internal.tools.PlaceTool;
import slopewright.ui.plan.internal.tools.SelectTool;
import slopewright.ui.plan.internal.tools.SiteShape;

/** The palette: select, pan, the families that the rule set of the project covers, and what a site has. */
public final class PlanPalette {

    private static final String UNKNOWN_FAMILY = "family";

    private final ProjectDocument document;
    private final PaletteRoot root = new PaletteRoot();
    private final PaletteDrawer families = new PaletteDrawer(Messages.get("palette.indicators"));
    private List<String> offered = List.of();

    record Making(Placed placed) implements CreationFactory {

        @Override
        public Object getNewObject() {
            return placed;
        }

        @Override
        public Object getObjectType() {
            return placed.getClass();
        }
    }

    /**
     * Makes the palette of a document.
     *
     * @param document the document
     * @param plan     gives the plan once it is there
     */
    public PlanPalette(ProjectDocument document, Supplier<PlanContext> plan) {
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
        tools.add(new MarqueeToolEntry(Messages.get("palette.marquee"), Messages.get("palette.marquee-tip")));
        tools.add(new ToolEntry(Messages.get("palette.measure"), Messages.get("palette.measure-tip"), icon("measure"), icon("measure")) {
            @Override
            public Tool createTool() {
                return new MeasureTool(plan.get().diagram());
            }
        });
        root.add(tools);
        root.setDefaultEntry(select);
        root.add(families);
        PaletteDrawer site = new PaletteDrawer(Messages.get("palette.site"));
        site.add(entry(Messages.get("palette.obstacle"), Messages.get("palette.obstacle-tip"), "obstacle",
                new Placed.PointObstacle()));
        for (SiteShape shape : SiteShape.values()) {
            site.add(new ToolEntry(Messages.get("palette." + shape.key()), Messages.get("palette." + shape.key() + "-tip"),
                    icon(shape.key()), icon(shape.key())) {
                @Override
                public Tool createTool() {
                    return new DrawTool(plan.get(), shape);
                }
            });
        }
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
            String name = MessageTexts.of(Families.name(family));
            families.add(entry(name, name + ": " + where(family), family.key(), new Placed.Aid(family.key())));
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
        CombinedTemplateCreationEntry entry = new CombinedTemplateCreationEntry(label, description, placed, new Making(placed), icon(icon),
                icon(icon));
        entry.setToolClass(PlaceTool.class);
        return entry;
    }

    private static ImageDescriptor icon(String name) {
        URL own = PlanPalette.class.getResource("/icons/" + name + ".svg");
        URL url = own == null ? PlanPalette.class.getResource("/icons/" + UNKNOWN_FAMILY + ".svg") : own;
        return url == null ? ImageDescriptor.getMissingImageDescriptor() : ImageDescriptor.createFromURL(url);
    }
}
