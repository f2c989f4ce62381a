package slopewright.ui.elements;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;

import slopewright.edit.AddChild;
import slopewright.edit.Compound;
import slopewright.edit.RecordedEdit;
import slopewright.edit.RemoveElement;
import slopewright.model.Identified;
import slopewright.model.Named;
import slopewright.model.Project;
import slopewright.model.util.Ids;
import slopewright.model.util.Projects;
import slopewright.ui.MessageTexts;
import slopewright.ui.units.QuantityFormat;

/**
 * The elements of one kind as a sheet: what people make, copy, paste and remove in it, each as one edit. As text a sheet has a line for
 * each row and a tabulator between cells, as programs for tables give and take it.
 */
public final class ElementSheet {

    private final ElementKind kind;
    private final Project project;
    private final List<ElementColumn> columns;

    /**
     * Makes the sheet of a kind.
     *
     * @param kind    the kind
     * @param project whose elements they are
     * @param format  how numbers are shown and read
     */
    public ElementSheet(ElementKind kind, Project project, QuantityFormat format) {
        this.kind = kind;
        this.project = project;
        this.columns = ElementColumns.of(kind, format);
    }

    List<ElementColumn> columns() {
        return columns;
    }

    /** Returns the headings. */
    public List<String> titles() {
        return columns.stream().map(ElementColumn::title).toList();
    }

    /** Returns a row as it is shown. */
    public List<String> shown(Identified row) {
        return columns.stream().map(column -> column.shown(row)).toList();
    }

    /**
     * Returns the edit that gives a cell a value.
     *
     * @param row    the row
     * @param column number of the column
     * @param text   what was typed
     * @throws IllegalArgumentException where it makes no sense; the message says why
     */
    public RecordedEdit type(Identified row, int column, String text) {
        return columns.get(column).edit(row, text);
    }

    /**
     * Returns the edit that adds an empty element.
     *
     * @param owner what holds it
     */
    public AddChild add(Identified owner) {
        return AddChild.of(owner, kind.reference().orElseThrow(), kind.create());
    }

    /** Returns rows as text, the headings first. */
    public String text(List<Identified> rows) {
        List<String> lines = new ArrayList<>(List.of(String.join("\t", titles())));
        rows.forEach(row -> lines.add(String.join("\t",
                columns.stream().map(column -> column.typed(row).replaceAll("\\s+", " ")).toList())));
        return String.join("\n", lines) + "\n";
    }

    /** Returns the edit that removes rows. */
    public RecordedEdit remove(List<Identified> rows) {
        return Compound.of(Messages.get("edit.remove", rows.size(), kind.label()), rows.stream().map(RemoveElement::of).toList());
    }

    /** Returns the edit that puts a copy of each row, with all it contains, beside it. */
    public RecordedEdit duplicate(List<Identified> rows) {
        return Compound.of(Messages.get("edit.duplicate", rows.size(), kind.label()), adding(CopiedElements.of(rows).kept(),
                Optional.empty()));
    }

    /**
     * Returns the edit that adds copies of elements of this kind, with all that they hold.
     *
     * @param kept  what was copied
     * @param owner what holds those of which the holder is not in this project; empty where there is none
     * @throws IllegalArgumentException where nothing can hold them
     */
    public RecordedEdit paste(List<CopiedElements.Kept> kept, Optional<Identified> owner) {
        return Compound.of(Messages.get("edit.paste", kept.size(), kind.label()), adding(kept, owner));
    }

    private List<RecordedEdit> adding(List<CopiedElements.Kept> kept, Optional<Identified> owner) {
        List<RecordedEdit> parts = new ArrayList<>();
        for (CopiedElements.Kept one : kept) {
            Identified holder = Ids.find(project, one.holderId()).filter(found -> one.reference().getEContainingClass().isInstance(found))
                    .or(() -> owner).orElseThrow(() -> new IllegalArgumentException(Messages.get("paste.not-here")));
            parts.add(one.into(holder, name -> Messages.get("copy.name", name)));
        }
        return parts;
    }

    /**
     * Returns the edit that adds a row for each line of a text. Where the first line has headings of this sheet, cells go by them; else
     * they go by the order of the columns, what holds the row left out. Empty cells stay unknown.
     *
     * @param text  lines with tabulators
     * @param owner what holds rows that name no holder; empty where there is none
     * @throws IllegalArgumentException where a cell makes no sense; the message names line and column, and nothing is to be added
     */
    public RecordedEdit paste(String text, Optional<Identified> owner) {
        List<PastedLine> lines = PastedLine.of(text);
        if (lines.isEmpty() || !kind.isListed()) {
            throw new IllegalArgumentException(Messages.get(kind.isListed() ? "paste.nothing" : "paste.not-here"));
        }
        List<Heading> headings = headings(lines.get(0).cells());
        boolean named = !headings.isEmpty();
        List<Heading> order = named ? headings : columns.stream().filter(column -> !(column instanceof ElementColumn.Holder))
                .map(column -> new Heading(Optional.of(column), "")).toList();
        List<RecordedEdit> parts = lines.stream().skip(named ? 1 : 0).map(line -> row(line, order, owner)).toList();
        if (parts.isEmpty()) {
            throw new IllegalArgumentException(Messages.get("paste.nothing"));
        }
        return Compound.of(Messages.get("edit.paste", parts.size(), kind.label()), parts);
    }

    /** A column that is pasted into, none for one without a heading, with the unit that its heading names instead of the usual one. */
    private record Heading(Optional<ElementColumn> column, String unit) {

        String complete(String cell) {
            return unit.isEmpty() || cell.isEmpty() ? cell : cell + " " + unit;
        }
    }

    /** Returns the columns that a line of headings means; none where it is no line of headings. */
    private List<Heading> headings(List<String> cells) {
        List<Heading> found = new ArrayList<>();
        List<String> unknown = new ArrayList<>();
        Set<ElementColumn> known = new HashSet<>();
        for (String cell : cells) {
            Optional<Heading> heading = cell.isEmpty() ? Optional.of(new Heading(Optional.empty(), "")) : heading(cell);
            heading.ifPresentOrElse(found::add, () -> unknown.add(cell));
            if (heading.flatMap(Heading::column).filter(column -> !known.add(column)).isPresent()) {
                throw new IllegalArgumentException(Messages.get("paste.heading-twice", cell));
            }
        }
        if (known.isEmpty()) {
            return List.of();
        }
        if (!unknown.isEmpty()) {
            throw new IllegalArgumentException(Messages.get("paste.heading", String.join(", ", unknown), String.join(", ", titles())));
        }
        return found;
    }

    private Optional<Heading> heading(String cell) {
        Predicate<String> isCell = name -> name.equalsIgnoreCase(cell);
        Map<ElementColumn, String> units = new LinkedHashMap<>();
        for (ElementColumn column : columns) {
            String prefix = column.name().toLowerCase(Locale.ROOT) + " (";
            if (isCell.test(column.name()) || isCell.test(column.title())) {
                return Optional.of(new Heading(Optional.of(column), ""));
            }
            if (!column.unit().isEmpty() && cell.toLowerCase(Locale.ROOT).startsWith(prefix) && cell.endsWith(")")) {
                units.put(column, cell.substring(prefix.length(), cell.length() - 1));
            }
        }
        return units.entrySet().stream().findFirst().map(entry -> new Heading(Optional.of(entry.getKey()), entry.getValue()));
    }

    private RecordedEdit row(PastedLine line, List<Heading> order, Optional<Identified> owner) {
        List<String> cells = line.cells();
        if (cells.size() > order.size() && cells.subList(order.size(), cells.size()).stream().anyMatch(cell -> !cell.isEmpty())) {
            throw new IllegalArgumentException(Messages.get("paste.too-many", line.number(), cells.size(), order.size()));
        }
        Identified made = kind.create();
        Optional<Identified> holder = owner;
        for (int i = 0; i < Math.min(cells.size(), order.size()); i++) {
            Heading heading = order.get(i);
            String cell = cells.get(i);
            if (cell.isEmpty()) {
                continue;
            }
            ElementColumn column = heading.column()
                    .orElseThrow(() -> new IllegalArgumentException(Messages.get("paste.no-heading", line.number(), cell)));
            try {
                if (column instanceof ElementColumn.Holder) {
                    holder = Optional.of(holder(cell));
                } else {
                    column.write(made, heading.complete(cell), project);
                }
            } catch (IllegalArgumentException e) {
                throw new IllegalArgumentException(Messages.get("paste.cell", line.number(), column.name(), e.getMessage()), e);
            }
        }
        Identified into = holder.orElseThrow(() -> new IllegalArgumentException(Messages.get("paste.no-holder", line.number())));
        return AddChild.of(into, kind.reference().orElseThrow(), made);
    }

    private Identified holder(String text) {
        List<Identified> owners = kind.owners(project);
        List<Identified> found = owners.stream().filter(owner -> isNamed(owner, text)).toList();
        if (found.size() != 1) {
            throw new IllegalArgumentException(Messages.get(found.isEmpty() ? "paste.unknown-holder" : "paste.several-holders", text));
        }
        return found.get(0);
    }

    private static boolean isNamed(Identified owner, String text) {
        return Stream.of(MessageTexts.path(owner), MessageTexts.label(owner), Projects.path(owner), Projects.label(owner),
                owner instanceof Named named
                ? String.valueOf(named.getName()) : "")
                .anyMatch(text::equalsIgnoreCase);
    }
}
