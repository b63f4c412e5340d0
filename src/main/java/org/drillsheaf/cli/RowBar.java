package org.drillsheaf.cli;

import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarStyle;
import org.drillsheaf.store.upkeep.Watcher;
import org.jspecify.annotations.Nullable;

/** Shows on a terminal how far a long job on the record has come; silent where there is no terminal. */
final class RowBar implements Watcher, AutoCloseable {
    private final @Nullable ProgressBar bar;

    RowBar(String task) {
        bar = System.console() == null
                ? null
                : new ProgressBarBuilder()
                        .setTaskName(task)
                        .setStyle(ProgressBarStyle.ASCII)
                        .build();
    }

    @Override
    public void at(long done, long all) {
        if (bar != null) {
            bar.maxHint(all);
            bar.stepTo(done);
        }
    }

    @Override
    public void close() {
        if (bar != null) {
            bar.close();
        }
    }
}
