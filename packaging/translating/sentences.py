"""Find every sentence for people in the code, with the context it is looked up under.

Modules word their sentences through a function of their own that calls
``QCoreApplication.translate`` with one context, which the tools that come with Qt do not see
through; so the code is read here, and what is found is handed to those tools as plain calls.
"""

from __future__ import annotations

import ast
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from pathlib import Path


@dataclass(frozen=True, slots=True, order=True)
class Sentence:
    """One text in the code's language, and the context it is looked up under."""

    context: str
    text: str


class NotPlainError(ValueError):
    """A sentence that is put together while the program runs, so that none can be found."""


def sentences_of(folders: tuple[Path, ...]) -> tuple[Sentence, ...]:
    """Return every sentence below some folders, in order, none twice.

    Raises
    ------
    NotPlainError
        If a text to be translated is not written out as one constant.
    """
    found: set[Sentence] = set()
    trees = {path: ast.parse(path.read_text("utf-8"), str(path)) for path in _modules(folders)}
    shared = {path: _module_wording(tree) for path, tree in trees.items()}
    by_module = {_module_name(path): names for path, names in shared.items()}
    for path, tree in trees.items():
        reader = _Reader(path, shared[path] | _taken_in(tree, by_module))
        reader.visit(tree)
        found |= reader.found
    return tuple(sorted(found))


def _modules(folders: tuple[Path, ...]) -> Iterator[Path]:
    for folder in folders:
        yield from sorted(folder.rglob("*.py"))


def _module_name(path: Path) -> str:
    parts = path.with_suffix("").parts
    start = parts.index("brewdesk") if "brewdesk" in parts else 0
    return ".".join(parts[start:])


def _wording_context(function: ast.FunctionDef) -> str | None:
    """Return the context of a function that only looks its argument up; None for others."""
    if not function.args.args:
        return None
    last = function.body[-1]
    if not isinstance(last, ast.Return) or not isinstance(last.value, ast.Call):
        return None
    call = last.value
    if not _is_translate(call) or len(call.args) < 2:
        return None
    context, text = call.args[0], call.args[1]
    own = {argument.arg for argument in function.args.args}
    if isinstance(context, ast.Constant) and isinstance(text, ast.Name) and text.id in own:
        return str(context.value)
    return None


def _module_wording(tree: ast.Module) -> dict[str, str]:
    return {
        node.name: context
        for node in tree.body
        if isinstance(node, ast.FunctionDef) and (context := _wording_context(node)) is not None
    }


def _taken_in(tree: ast.Module, by_module: dict[str, dict[str, str]]) -> dict[str, str]:
    """Return the wording functions that a module imports from another."""
    names: dict[str, str] = {}
    for node in ast.walk(tree):
        if isinstance(node, ast.ImportFrom) and node.module in by_module:
            known = by_module[node.module]
            for alias in node.names:
                if alias.name in known:
                    names[alias.asname or alias.name] = known[alias.name]
    return names


def _is_translate(call: ast.Call) -> bool:
    function = call.func
    return (
        isinstance(function, ast.Attribute)
        and function.attr == "translate"
        and isinstance(function.value, ast.Name)
        and function.value.id == "QCoreApplication"
    )


def _names_for_tr(function: ast.FunctionDef) -> list[str]:
    """Return the short names that a method gives to ``self.tr``."""
    names = []
    for node in ast.walk(function):
        if not isinstance(node, ast.Assign) or len(node.targets) != 1:
            continue
        target, value = node.targets[0], node.value
        pairs: Iterable[tuple[ast.expr, ast.expr]] = [(target, value)]
        if isinstance(target, ast.Tuple) and isinstance(value, ast.Tuple):
            pairs = zip(target.elts, value.elts, strict=False)
        names += [
            name.id
            for name, given in pairs
            if isinstance(name, ast.Name)
            and isinstance(given, ast.Attribute)
            and given.attr == "tr"
        ]
    return names


class _Reader(ast.NodeVisitor):
    """Walk one module with the wording functions that are known at each place."""

    def __init__(self, path: Path, wording: dict[str, str]) -> None:
        self.found: set[Sentence] = set()
        self._path = path
        self._wording = [wording]
        self._classes: list[str] = []

    def visit_ClassDef(self, node: ast.ClassDef) -> None:  # ast's name
        self._classes.append(node.name)
        self.generic_visit(node)
        self._classes.pop()

    def visit_FunctionDef(self, node: ast.FunctionDef) -> None:  # ast's name
        if _wording_context(node) is not None:
            return
        inner = {
            child.name: context
            for child in node.body
            if isinstance(child, ast.FunctionDef)
            and (context := _wording_context(child)) is not None
        }
        inner |= dict.fromkeys(_names_for_tr(node), self._classes[-1]) if self._classes else {}
        self._wording.append(self._wording[-1] | inner)
        self.generic_visit(node)
        self._wording.pop()

    def visit_Call(self, node: ast.Call) -> None:  # ast's name
        self.generic_visit(node)
        function = node.func
        if _is_translate(node):
            self._take(node.args[0], node.args[1], node)
        elif isinstance(function, ast.Name) and function.id in self._wording[-1]:
            context = ast.Constant(self._wording[-1][function.id])
            self._take(context, node.args[0], node)
        elif isinstance(function, ast.Attribute) and function.attr == "tr":
            is_own = isinstance(function.value, ast.Name) and function.value.id == "self"
            if not is_own or not self._classes:
                # Looked up under the class of that object, which is not to be seen here.
                raise NotPlainError(f"{self._path.name}:{node.lineno}: {ast.unparse(node)}")
            self._take(ast.Constant(self._classes[-1]), node.args[0], node)

    def _take(self, context: ast.expr, text: ast.expr, node: ast.Call) -> None:
        if not isinstance(context, ast.Constant) or not isinstance(text, ast.Constant):
            where = f"{self._path.name}:{node.lineno}"
            raise NotPlainError(f"{where}: {ast.unparse(node)}")
        self.found.add(Sentence(str(context.value), str(text.value)))
