"""Every public answer says where it is from: itself, or in the list of formulas."""

from __future__ import annotations

import dataclasses
import importlib
import inspect
import typing

import pytest

from culturecore import sugar
from culturecore.formulas import FORMULA_SOURCES, sources_of
from culturecore.outcome import Estimate, Verdict
from culturecore.sources import SOURCES

MODULES = (
    "acidarrays", "acidbase", "acidconstants", "acidpair", "buffers", "cooling", "filltable",
    "heat", "icemix", "instruments", "phmeter", "refraction", "starter", "sugar", "titration",
    "vessels",
)  # fmt: skip


def _public_functions(module_name: str):
    module = importlib.import_module(f"culturecore.{module_name}")
    for name, member in inspect.getmembers(module, callable):
        function = inspect.unwrap(member)
        is_own = inspect.isfunction(function) and function.__module__ == module.__name__
        if is_own and not name.startswith("_"):
            yield f"{module_name}.{name}", function


def _carries_sources(function) -> bool:
    answer = typing.get_type_hints(function)["return"]
    return answer in (Estimate, Verdict) or (
        dataclasses.is_dataclass(answer)
        and "sources" in {field.name for field in dataclasses.fields(answer)}
    )


@pytest.mark.parametrize("module_name", MODULES)
def test_public_functions_name_their_sources(module_name: str) -> None:
    silent = {
        name
        for name, function in _public_functions(module_name)
        if not _carries_sources(function) and name not in FORMULA_SOURCES
    }
    assert not silent


def test_list_holds_no_function_that_is_gone() -> None:
    known = {name for module in MODULES for name, _function in _public_functions(module)}
    assert set(FORMULA_SOURCES) <= known


def test_sources_are_told_in_full() -> None:
    (sucrose, water) = sources_of(sugar.density_kg_per_l)
    assert "ICUMSA" in sucrose.citation
    assert "Kell" in water.citation
    assert {key for keys in FORMULA_SOURCES.values() for key in keys} <= set(SOURCES)


def test_answers_with_their_own_sources_are_not_listed_twice() -> None:
    from culturecore.titration import titrate

    with pytest.raises(KeyError):
        sources_of(titrate)
