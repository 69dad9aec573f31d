package org.barreltally.shows;

import java.util.List;
import java.util.UUID;

/**
 * A count of what came home, as it is kept.
 *
 * @param movement null where nothing came home
 * @param drawer null where no cash was counted
 * @param toLookAt what does not fit with the rest of the book
 * @param toDos what this count asks for
 */
public record CameBack(
    UUID id,
    UUID show,
    ShowState state,
    UUID movement,
    List<ComeBack.Line> lines,
    DrawerCount drawer,
    List<LookAt> toLookAt,
    List<ToDo> toDos) {}
