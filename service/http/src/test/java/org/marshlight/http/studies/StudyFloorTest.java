package org.marshlight.http.studies;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.marshlight.http.problems.Refusal;

/** A place is kept for as long as anything is worked at it. */
class StudyFloorTest {

  private final StudyFloor floor = new StudyFloor(1);

  @AfterEach
  void close() {
    floor.close();
  }

  @Test
  void aClientThatLeavesMakesNoRoomWhileItsStudyIsStillWorked() {
    StudyFloor.Place place = floor.enter();
    int free =
        place.work(
            () -> {
              place.leave();
              assertThat(place.isLeft()).isTrue();
              assertThatThrownBy(floor::enter).isInstanceOf(Refusal.class);
              return floor.free();
            });
    assertThat(free).isZero();
    assertThat(floor.free()).isEqualTo(1);
  }

  @Test
  void aPlaceIsKeptBetweenTheWorkAndTheEndOfTheAnswer() {
    StudyFloor.Place place = floor.enter();
    place.work(() -> null);
    assertThat(floor.free()).isZero();
    place.leave();
    place.leave();
    assertThat(floor.free()).isEqualTo(1);
  }

  @Test
  void workThatFailsGivesThePlaceBackToo() {
    StudyFloor.Place place = floor.enter();
    assertThatThrownBy(
            () ->
                place.work(
                    () -> {
                      place.leave();
                      throw new IllegalStateException();
                    }))
        .isInstanceOf(IllegalStateException.class);
    assertThat(floor.free()).isEqualTo(1);
  }
}
