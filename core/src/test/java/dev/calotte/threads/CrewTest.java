package dev.calotte.threads;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIOException;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicIntegerArray;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class CrewTest {

    /** The first piece ends only when the second has. */
    @Test
    void resultsComeInTheOrderOfTheWork() {
        CountDownLatch secondDone = new CountDownLatch(1);
        List<Callable<String>> work = List.of(
                () -> {
                    secondDone.await();
                    return "first";
                },
                () -> {
                    secondDone.countDown();
                    return "second";
                });
        assertThat(new Crew(2).all(work)).containsExactly("first", "second");
    }

    @Test
    void oneDoesAll() {
        List<Callable<Integer>> work = IntStream.range(0, 20)
                .mapToObj(i -> (Callable<Integer>) () -> i)
                .toList();
        assertThat(new Crew(1).all(work))
                .containsExactlyElementsOf(IntStream.range(0, 20).boxed().toList());
        assertThat(new Crew(3).all(List.<Callable<Integer>>of())).isEmpty();
    }

    @Test
    void stretchesCoverARowOnce() {
        for (int threads : new int[] {1, 2, 3}) {
            for (int count : new int[] {0, 1, 5, 1000}) {
                AtomicIntegerArray worked = new AtomicIntegerArray(count);
                new Crew(threads).along(count, (from, to) -> {
                    for (int i = from; i < to; i++) {
                        worked.incrementAndGet(i);
                    }
                });
                for (int i = 0; i < count; i++) {
                    assertThat(worked.get(i)).isEqualTo(1);
                }
            }
        }
    }

    @Test
    void thingsAreTakenInTurnByTheThreadThatAsks() {
        for (int threads : new int[] {1, 2, 3}) {
            for (int count : new int[] {0, 1, 5, 1000}) {
                List<Integer> taken = new ArrayList<>();
                Thread asking = Thread.currentThread();
                new Crew(threads).inTurn(count, i -> i, thing -> {
                    assertThat(Thread.currentThread()).isSameAs(asking);
                    taken.add(thing);
                });
                assertThat(taken)
                        .containsExactlyElementsOf(
                                IntStream.range(0, count).boxed().toList());
            }
        }
    }

    /** However many there are and however slowly they are taken. */
    @Test
    void fewThingsWaitForTheirTurn() {
        AtomicInteger waiting = new AtomicInteger();
        AtomicInteger most = new AtomicInteger();
        new Crew(2)
                .inTurn(
                        1000,
                        i -> {
                            most.accumulateAndGet(waiting.incrementAndGet(), Math::max);
                            return i;
                        },
                        thing -> waiting.decrementAndGet());
        assertThat(most).hasValueBetween(1, 6);
        assertThat(waiting).hasValue(0);
    }

    @Test
    void whatCannotBeMadeIsToldInItsTurn() {
        for (int threads : new int[] {1, 3}) {
            List<Integer> taken = new ArrayList<>();
            assertThatExceptionOfType(ArithmeticException.class)
                    .isThrownBy(() -> new Crew(threads).inTurn(10, i -> 12 / (4 - i), taken::add));
            assertThat(taken).containsExactly(3, 4, 6, 12);
        }
    }

    @Test
    void whatCannotBeTakenEndsTheWork() {
        for (int threads : new int[] {1, 3}) {
            List<Integer> taken = new ArrayList<>();
            assertThatIOException()
                    .isThrownBy(() -> new Crew(threads).inTurn(10, i -> i, i -> {
                        if (i == 2) {
                            throw new IOException("disk full");
                        }
                        taken.add(i);
                    }))
                    .withMessage("disk full");
            assertThat(taken).containsExactly(0, 1);
        }
    }

    @Test
    void fewThingsAreWorkForOne() {
        assertThat(Crew.forMany(1000).threads()).isEqualTo(1);
        assertThat(Crew.forMany(10_000_000).threads())
                .isEqualTo(Runtime.getRuntime().availableProcessors());
    }

    @Test
    void theFirstFailureInTheOrderOfTheWorkIsTold() {
        CountDownLatch secondFailed = new CountDownLatch(1);
        List<Callable<String>> work = List.of(
                () -> {
                    secondFailed.await();
                    throw new ArithmeticException("first");
                },
                () -> {
                    secondFailed.countDown();
                    throw new ArithmeticException("second");
                });
        assertThatExceptionOfType(ArithmeticException.class)
                .isThrownBy(() -> new Crew(2).all(work))
                .withMessage("first");
    }

    @Test
    void checkedFailuresAreTheCause() {
        Callable<String> failing = () -> {
            throw new IOException("disk full");
        };
        assertThatIllegalStateException()
                .isThrownBy(() -> new Crew(1).all(List.of(failing)))
                .withCauseInstanceOf(IOException.class);
    }

    @Test
    void nobodyDoesNoWork() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Crew(0));
    }
}
