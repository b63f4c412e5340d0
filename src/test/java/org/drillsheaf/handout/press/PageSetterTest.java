package org.drillsheaf.handout.press;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.drillsheaf.Problems;
import org.junit.jupiter.api.Test;

class PageSetterTest {
    private static final int AT_ONCE = 4;
    private static final int ROUNDS = 15;
    private static final String ALL_WEIGHTS =
            "a <fo:inline font-weight=\"600\">b</fo:inline> <fo:inline font-weight=\"700\">c</fo:inline>"
                    + " <fo:inline font-weight=\"900\">d</fo:inline>";

    /** The first documents of a batch begin at the same moment, when nothing has been read yet. */
    @Test
    void documentsThatBeginAtTheSameMomentAllFindEveryFont() throws Exception {
        ExecutorService threads = Executors.newFixedThreadPool(AT_ONCE);
        try {
            for (int round = 0; round < ROUNDS; round++) {
                PageSetter fresh = new PageSetter(new FontFiles());
                CyclicBarrier start = new CyclicBarrier(AT_ONCE);
                List<Future<Boolean>> papers = new ArrayList<>();
                for (int i = 0; i < AT_ONCE; i++) {
                    papers.add(threads.submit(() -> {
                        start.await();
                        Problems problems = new Problems();
                        boolean isSet = fresh.set(
                                        "test", SmallPage.of(ALL_WEIGHTS), new PictureShelf(), Instant.EPOCH, problems)
                                .isPresent();
                        assertThat(problems.all()).isEmpty();
                        return isSet;
                    }));
                }
                for (Future<Boolean> paper : papers) {
                    assertThat(paper.get()).isTrue();
                }
            }
        } finally {
            threads.shutdownNow();
        }
    }

    /** Documents take turns with fonts that were read once; none may see what another used of them. */
    @Test
    void documentsSetAtTheSameTimeAreThoseThatAreSetAlone() throws Exception {
        List<String> pages = List.of(
                SmallPage.of(ALL_WEIGHTS),
                SmallPage.of("AVATAR To fit, <fo:inline font-weight=\"600\">Type 12° – 3 × 5</fo:inline>"),
                SmallPage.of("Marlow רות"),
                SmallPage.of("zyx " + ALL_WEIGHTS + " ¿cuántas?"));
        List<byte[]> alone = new ArrayList<>();
        for (String page : pages) {
            alone.add(set(new PageSetter(new FontFiles()), page));
        }
        PageSetter shared = new PageSetter(new FontFiles());
        ExecutorService threads = Executors.newFixedThreadPool(AT_ONCE);
        try {
            List<Future<byte[]>> papers = new ArrayList<>();
            for (int i = 0; i < 200; i++) {
                String page = pages.get(i % pages.size());
                papers.add(threads.submit(() -> set(shared, page)));
            }
            for (int i = 0; i < papers.size(); i++) {
                assertThat(papers.get(i).get()).isEqualTo(alone.get(i % pages.size()));
            }
        } finally {
            threads.shutdownNow();
        }
    }

    private static byte[] set(PageSetter setter, String page) {
        Problems problems = new Problems();
        byte[] raw = setter.set("test", page, new PictureShelf(), Instant.EPOCH, problems)
                .orElseThrow(() -> new AssertionError(problems.all()));
        return PdfFinish.finish(raw, page, Instant.EPOCH);
    }
}
