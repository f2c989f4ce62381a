package slopewright.bench;

import java.lang.management.ManagementFactory;
import java.util.Locale;

import com.sun.management.OperatingSystemMXBean;

/**
 * How long a work took.
 *
 * @param clock      seconds by the clock, the least of all runs
 * @param processors seconds that the processors spent together, in which what else the machine does counts least; the mean of the later half
 *                   of the runs, for the system counts in hundredths of a second
 */
record Took(double clock, double processors) {

    private static final OperatingSystemMXBean SYSTEM = (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();

    /** What is measured. */
    interface Work {
        /** Does it once. */
        void run() throws Exception;
    }

    /** Does a work so many times. */
    static Took best(int times, Work work) {
        double clock = Double.POSITIVE_INFINITY;
        double processors = 0;
        int counted = (times + 1) / 2;
        for (int i = 0; i < times; i++) {
            long begun = System.nanoTime();
            long spent = SYSTEM.getProcessCpuTime();
            try {
                work.run();
            } catch (Exception e) {
                throw new IllegalStateException(e);
            }
            clock = Math.min(clock, (System.nanoTime() - begun) / 1e9);
            processors += i < times - counted ? 0 : (SYSTEM.getProcessCpuTime() - spent) / 1e9 / counted;
        }
        return new Took(clock, processors);
    }

    /** Returns both together. */
    Took and(Took other) {
        return new Took(clock + other.clock, processors + other.processors);
    }

    /** Returns how many times as long as another work it took, in both. */
    String over(Took other) {
        return String.format(Locale.ROOT, "%.2f by the clock, %.2f by the processors", clock / other.clock, processors / other.processors);
    }

    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%.4f s, processors %.4f s", clock, processors);
    }
}
