package org.drillsheaf.benchmarks;

import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import javafx.event.Event;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import org.drillsheaf.desk.DeskRun;
import org.drillsheaf.desk.client.ClientCase;
import org.drillsheaf.desk.client.ClientDraft;
import org.drillsheaf.desk.client.Evaluation;
import org.drillsheaf.desk.client.Evaluator;
import org.drillsheaf.desk.setting.DeskSettings;
import org.drillsheaf.store.record.PartKey;

/**
 * Time from a key in a field of the screen to the reading and to the program that the real window shows for it (end of layout
 * of the frame), with the whole house library; and the work alone, in processor time of one thread. No test;
 * {@code docs/benchmarks.md} says how to run it.
 */
public final class KeystrokeTimes {
    private static final int WARM = 8;

    /** Fields of one value each that is limited and one that is full: their mixtures are all different programs to find. */
    private static final List<Flip> FLIPS = List.of(
            new Flip("Comfortable breath out, s", "3", "9"),
            new Flip("Straight-leg raise, Left, °", "50", "95"),
            new Flip("Trunk rotation, Left, °", "20", "60"),
            new Flip("Hip internal rotation, Left, °", "10", "50"),
            new Flip("Prone hip extension, Left, °", "-9", "25"));

    private record Flip(String field, String limited, String full) {}

    private KeystrokeTimes() {}

    public static void main(String[] arguments) throws Exception {
        DeskRun desk = DeskRun.start(Files.createTempDirectory("keys"), DeskSettings.FIRST.lockedAfter(0));
        desk.click("Open the demo clinic");
        for (String client : List.of("Odile Farrant", "Joaquín Mirande")) {
            desk.click(client);
            desk.untilSeen("tests taken.");
            keys(desk, client);
            work(desk, client);
            desk.click("All clients");
            desk.untilSeen("clients");
        }
        System.exit(0);
    }

    private static ClientCase client(DeskRun desk) {
        return desk.window()
                .frame()
                .orElseThrow()
                .clients()
                .openClient()
                .orElseThrow()
                .client();
    }

    private static void keys(DeskRun desk, String name) throws InterruptedException {
        ClientCase client = DeskRun.fx(() -> client(desk));
        desk.until("the first program is there", client::isBuiltForNow);
        List<Double> readings = new ArrayList<>();
        List<Double> programs = new ArrayList<>();
        List<Double> toolkit = new ArrayList<>();
        List<Double> painting = new ArrayList<>();
        Thread painter = painter();
        int last = 0;
        // Gray's code: each step turns one field over, and no mixture comes twice.
        for (int i = 1; i < 1 << FLIPS.size(); i++) {
            int mixture = i ^ (i >> 1);
            Flip flip = FLIPS.get(Integer.numberOfTrailingZeros(mixture ^ last));
            boolean full = (mixture & (mixture ^ last)) != 0;
            last = mixture;
            TextField field = DeskRun.fx(() -> field(desk, flip.field()));
            Optional<double[]> times = key(desk, client, painter, field, full ? flip.full() : flip.limited());
            if (i > WARM && times.isPresent()) {
                readings.add(times.get()[0]);
                programs.add(times.get()[1]);
                toolkit.add(times.get()[2]);
                painting.add(times.get()[3]);
            }
        }
        System.out.println(name + ", key to reading: " + summary(readings));
        System.out.println(name + ", key to program: " + summary(programs));
        System.out.println(name + ", of that the toolkit's thread, processor time: " + summary(toolkit));
        System.out.println(name + ", meanwhile the painting thread, processor time: " + summary(painting));
    }

    private static TextField field(DeskRun desk, String name) {
        return desk.scene().getRoot().lookupAll(".number-field").stream()
                .filter(node -> name.equals(node.getAccessibleRoleDescription()))
                .map(TextField.class::cast)
                .findFirst()
                .orElseThrow();
    }

    /**
     * Milliseconds from the last key of a value to the frame with its reading, to the frame with its program, and how long the
     * toolkit's thread and the one that paints worked until then.
     */
    private static Optional<double[]> key(
            DeskRun desk, ClientCase client, Thread painter, TextField field, String value)
            throws InterruptedException {
        double[] times = {-1, -1, -1, -1};
        CountDownLatch done = new CountDownLatch(1);
        Runnable[] frame = new Runnable[1];
        boolean changed = DeskRun.fx(() -> {
            field.requestFocus();
            field.selectAll();
            for (char digit : value.substring(0, value.length() - 1).toCharArray()) {
                press(field, digit);
            }
            Optional<Evaluation> before = client.evaluation().get();
            ClientDraft old = client.draft().get();
            long start = System.nanoTime();
            double thread = processor();
            double painted = processor(painter);
            press(field, value.charAt(value.length() - 1));
            ClientDraft wanted = client.draft().get();
            if (wanted.equals(old)) {
                return false; // the value stood there already
            }
            frame[0] = () -> {
                Optional<Evaluation> now = client.evaluation().get();
                boolean isRead =
                        !now.equals(before) && now.orElseThrow().draft().equals(wanted);
                double since = (System.nanoTime() - start) / 1e6;
                if (isRead && times[0] < 0) {
                    times[0] = since;
                }
                if (isRead && client.isBuiltForNow() && times[1] < 0) {
                    times[1] = since;
                    times[2] = processor() - thread;
                    times[3] = processor(painter) - painted;
                    done.countDown();
                }
            };
            desk.scene().addPostLayoutPulseListener(frame[0]);
            return true;
        });
        if (!changed) {
            return Optional.empty();
        }
        if (!done.await(60, TimeUnit.SECONDS)) {
            throw new IllegalStateException("no program after a minute for " + value);
        }
        DeskRun.fx(() -> {
            desk.scene().removePostLayoutPulseListener(frame[0]);
            return true;
        });
        return Optional.of(times);
    }

    private static void press(TextField field, char digit) {
        Event.fireEvent(
                field,
                new KeyEvent(
                        KeyEvent.KEY_TYPED, String.valueOf(digit), "", KeyCode.UNDEFINED, false, false, false, false));
    }

    /** The same work on this thread, with a planner that remembers nothing. */
    private static void work(DeskRun desk, String name) {
        ClientCase client = DeskRun.fx(() -> client(desk));
        ClientDraft draft = client.draft().get();
        LocalDate visit = client.visit().get();
        List<Double> reading = new ArrayList<>();
        List<Double> building = new ArrayList<>();
        for (int i = 0; i < 30; i++) {
            ClientDraft typed = draft.with(
                    PartKey.visit(visit), draft.visit(visit).with("/screen/breath-out/value", i % 2 == 0 ? 3 : 9));
            Evaluator evaluator = new Evaluator(client.evaluator().knowledge());
            double start = processor();
            Evaluation evaluation = evaluator.read(typed, visit);
            double read = processor();
            evaluator.build(evaluation, () -> false);
            if (i >= 10) {
                reading.add(read - start);
                building.add(processor() - read);
            }
        }
        System.out.println(name + ", reading alone, processor time: " + summary(reading));
        System.out.println(name + ", building alone, nothing remembered, processor time: " + summary(building));
    }

    /** The thread that paints what the toolkit's thread has laid out, beside it. */
    private static Thread painter() {
        return Thread.getAllStackTraces().keySet().stream()
                .filter(t -> t.getName().startsWith("QuantumRenderer"))
                .findFirst()
                .orElseThrow();
    }

    private static double processor(Thread thread) {
        return ManagementFactory.getThreadMXBean().getThreadCpuTime(thread.getId()) / 1e6;
    }

    private static double processor() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() / 1e6;
    }

    private static String summary(List<Double> times) {
        double[] sorted = times.stream().mapToDouble(d -> d).sorted().toArray();
        long over = Arrays.stream(sorted).filter(t -> t > 100).count();
        return String.format(
                "median %.1f ms, 95 %% %.1f ms, longest %.1f ms, over 100 ms: %d of %d",
                sorted[sorted.length / 2],
                sorted[(int) (sorted.length * 0.95)],
                sorted[sorted.length - 1],
                over,
                sorted.length);
    }
}
