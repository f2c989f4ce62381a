package slopewright.bench;

import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.nio.file.Path;
import java.util.Optional;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import slopewright.model.Project;
import slopewright.model.io.ProjectFile;
import slopewright.report.ReportOptions;
import slopewright.report.Reports;

/** One report as a first one after the start of Java: pages, seconds, and the greatest use of the heap. */
public final class ReportBench {

    private ReportBench() {
    }

    /** Runs with the name of a project file. */
    public static void main(String[] args) throws Exception {
        long begun = System.nanoTime();
        Project project = ProjectFile.load(Path.of(args[0]));
        byte[] pdf = Reports.write(project, Optional.empty(), new ReportOptions("2026-06-01"), Reports.Format.PDF);
        double seconds = (System.nanoTime() - begun) / 1e9;
        long peak = 0;
        for (MemoryPoolMXBean pool : ManagementFactory.getMemoryPoolMXBeans()) {
            peak += pool.getType() == MemoryType.HEAP ? pool.getPeakUsage().getUsed() : 0;
        }
        try (PDDocument document = Loader.loadPDF(pdf)) {
            System.out.printf("report of %d pages: %.2f s after the start of Java (aim 5), at most %d MB of heap (aim 512)%n",
                    document.getNumberOfPages(), seconds, peak >> 20);
        }
    }
}
