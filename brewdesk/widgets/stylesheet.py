"""The window's style sheet. Roles are dynamic properties, set with ``set_role``.

Labels: ``title``, ``heading``, ``muted``, ``error``, ``warn``, ``figure``.
Buttons: ``primary``, ``quiet``, ``link``, ``danger``, ``nav``. Frames: ``card``, ``strip``.
"""

from __future__ import annotations

from PySide6.QtWidgets import QWidget

from brewdesk.paths import resource
from brewdesk.widgets.theme import RADIUS, TOUCH, Tokens


def set_role(widget: QWidget, role: str) -> None:
    """Give ``widget`` a role of the style sheet and repaint it."""
    widget.setProperty("role", role)
    style = widget.style()
    style.unpolish(widget)
    style.polish(widget)


def style_sheet(t: Tokens, scale: float = 1.0) -> str:
    """Build the sheet for one scheme; ``scale`` multiplies type sizes."""

    def pt(size: float) -> str:
        return f"{size * scale:.1f}pt"

    field_height = TOUCH - 10
    # A style sheet takes pictures from files only, and tints none: one of each a scheme.
    arrow = resource("icons", f"arrow-down-{t.name}.svg").as_posix()
    tick = resource("icons", f"tick-{t.name}.svg").as_posix()
    return f"""
QWidget {{ color: {t.ink}; }}
QMainWindow, QDialog {{ background: {t.ground}; }}
QToolTip {{ background: {t.surface}; color: {t.ink}; border: 1px solid {t.edge}; padding: 4px; }}

QFrame[role="card"] {{ background: {t.surface}; border: 1px solid {t.line};
  border-radius: {RADIUS}px; }}
QFrame[role="strip"] {{ background: {t.surface}; border: none;
  border-top: 1px solid {t.line}; }}
QFrame[role="side"] {{ background: {t.surface}; border: none; border-left: 1px solid {t.line}; }}
QFrame[role="rail"] {{ background: {t.surface}; border: none; border-right: 1px solid {t.line}; }}
QFrame[role="warn"] {{ background: {t.warn_soft}; border: 1px solid {t.warn};
  border-radius: {RADIUS}px; }}
QFrame[role="danger"] {{ background: {t.danger_soft}; border: 1px solid {t.danger};
  border-radius: {RADIUS}px; }}
QFrame[role="good"] {{ background: {t.good_soft}; border: 1px solid {t.good};
  border-radius: {RADIUS}px; }}
QFrame[role="inform"] {{ background: {t.accent_soft}; border: 1px solid {t.accent};
  border-radius: {RADIUS}px; }}

QLabel {{ background: transparent; border: none; }}
QLabel[role="title"] {{ font-size: {pt(19)}; font-weight: 600; }}
QLabel[role="heading"] {{ font-size: {pt(13.5)}; font-weight: 600; }}
QLabel[role="figure"] {{ font-size: {pt(17)}; font-weight: 600; }}
QLabel[role="label"] {{ color: {t.muted}; font-size: {pt(10)}; }}
QLabel[role="muted"] {{ color: {t.muted}; }}
QLabel[role="error"] {{ color: {t.danger}; font-size: {pt(10)};
  background: transparent; border: none; }}
QLabel[role="warn"] {{ color: {t.warn}; background: transparent; border: none; }}
QLabel[role="good"] {{ color: {t.good}; background: transparent; border: none; }}

QPushButton, QToolButton {{ background: {t.surface}; color: {t.ink}; border: 1px solid {t.edge};
  border-radius: {RADIUS - 2}px; padding: 0 14px; min-height: {TOUCH - 2}px; outline: none; }}
QToolButton {{ padding: 0 10px; }}
QPushButton:hover, QToolButton:hover {{ background: {t.accent_soft}; }}
QPushButton:pressed, QToolButton:pressed {{ background: {t.line}; }}
QPushButton:focus, QToolButton:focus {{ border: 2px solid {t.focus}; padding: 0 13px; }}
QToolButton:focus {{ padding: 0 9px; }}
QPushButton:disabled, QToolButton:disabled {{ color: {t.muted}; border-color: {t.line};
  background: {t.ground}; }}
QPushButton[role="primary"] {{ background: {t.accent}; color: {t.on_accent};
  border: 1px solid {t.accent}; font-weight: 600; }}
QPushButton[role="primary"]:hover {{ border: 2px solid {t.ink}; padding: 0 13px; }}
QPushButton[role="primary"]:focus {{ border: 3px double {t.on_accent}; padding: 0 12px; }}
QPushButton[role="primary"]:disabled {{ background: {t.line}; color: {t.muted};
  border-color: {t.line}; }}
QPushButton[role="quiet"], QToolButton[role="quiet"] {{ background: transparent;
  border: 1px solid transparent; color: {t.accent}; font-weight: 600; }}
QPushButton[role="quiet"]:hover, QToolButton[role="quiet"]:hover {{ background: {t.accent_soft}; }}
QPushButton[role="quiet"]:focus, QToolButton[role="quiet"]:focus {{ border: 2px solid {t.focus}; }}
QPushButton[role="quiet"]:disabled, QToolButton[role="quiet"]:disabled {{ color: {t.muted}; }}
QPushButton[role="link"] {{ background: transparent; border: 1px solid transparent;
  border-radius: 4px; color: {t.muted}; text-align: left; padding: 0 1px; min-height: 24px; }}
QPushButton[role="link"]:hover {{ color: {t.accent}; text-decoration: underline; }}
QPushButton[role="link"]:focus {{ border: 2px solid {t.focus}; padding: 0; }}
QPushButton[role="kin"] {{ background: transparent; border: 1px solid transparent;
  border-radius: 4px; color: {t.accent}; font-weight: 600; text-align: left; padding: 0 1px;
  min-height: 28px; }}
QPushButton[role="kin"]:hover {{ text-decoration: underline; }}
QPushButton[role="kin"]:focus {{ border: 2px solid {t.focus}; padding: 0; }}
QPushButton[role="danger"] {{ color: {t.danger}; border-color: {t.danger}; }}
QPushButton[role="nav"] {{ background: transparent; border: 1px solid transparent;
  border-radius: {RADIUS}px; padding: 6px 2px; min-height: 0; min-width: 0; color: {t.muted};
  font-size: {pt(10)}; }}
QPushButton[role="nav"]:hover {{ background: {t.accent_soft}; }}
QPushButton[role="nav"]:checked {{ background: {t.accent_soft}; }}
QPushButton[role="nav"]:focus {{ border: 2px solid {t.focus}; }}
QToolButton::menu-indicator {{ image: none; }}

QLineEdit, QComboBox, QDateTimeEdit, QSpinBox, QDoubleSpinBox, QPlainTextEdit, QTextEdit {{
  background: {t.sunken}; color: {t.ink}; border: 1px solid {t.edge}; border-radius: 6px;
  padding: 4px 8px; min-height: {field_height}px;
  placeholder-text-color: {t.muted};
  selection-background-color: {t.accent}; selection-color: {t.on_accent}; }}
QLineEdit:focus, QComboBox:focus, QDateTimeEdit:focus, QSpinBox:focus, QDoubleSpinBox:focus,
QPlainTextEdit:focus, QTextEdit:focus {{ border: 2px solid {t.focus}; padding: 3px 7px; }}
QLineEdit[invalid="true"] {{ border: 2px solid {t.danger}; padding: 3px 7px; }}
QComboBox::drop-down {{ border: none; width: 26px; }}
QComboBox::down-arrow {{ image: url("{arrow}"); width: 12px; height: 12px; margin-right: 8px; }}
QDateEdit::drop-down, QDateTimeEdit::drop-down {{ border: none; width: 26px; }}
QDateEdit::down-arrow, QDateTimeEdit::down-arrow {{ image: url("{arrow}"); width: 12px;
  height: 12px; margin-right: 8px; }}
QComboBox QAbstractItemView {{ background: {t.surface}; color: {t.ink};
  border: 1px solid {t.edge}; selection-background-color: {t.accent};
  selection-color: {t.on_accent}; }}
QComboBox QAbstractItemView::item {{ min-height: {TOUCH - 6}px; padding: 0 8px; }}
QCheckBox, QRadioButton {{ min-height: {TOUCH - 8}px; spacing: 8px; }}
QCheckBox::indicator, QRadioButton::indicator {{ width: 18px; height: 18px;
  border: 1px solid {t.edge}; background: {t.sunken}; border-radius: 4px; }}
QRadioButton::indicator {{ border-radius: 9px; }}
QCheckBox::indicator:checked {{ background: {t.accent}; border: 1px solid {t.accent};
  image: url("{tick}"); }}
QRadioButton::indicator:checked {{ background: {t.accent}; border: 5px solid {t.sunken};
  width: 10px; height: 10px; }}
QCheckBox::indicator:focus, QRadioButton::indicator:focus {{ border: 2px solid {t.ink};
  width: 16px; height: 16px; }}

QTabWidget::pane {{ border: none; }}
QTabBar {{ background: transparent; qproperty-drawBase: 0; }}
QTabBar::tab {{ background: transparent; color: {t.muted}; padding: 0 14px;
  min-height: {TOUCH - 4}px; border-bottom: 3px solid transparent; }}
QTabBar::tab:selected {{ color: {t.ink}; font-weight: 600; border-bottom: 3px solid {t.accent}; }}
QTabBar::tab:focus {{ color: {t.accent}; }}

QTableView, QTreeView, QListView {{ background: {t.surface}; color: {t.ink};
  border: 1px solid {t.line}; border-radius: {RADIUS - 2}px; gridline-color: {t.line};
  selection-background-color: {t.accent_soft}; selection-color: {t.ink};
  alternate-background-color: {t.ground}; outline: none; }}
QTableView:focus, QTreeView:focus, QListView:focus {{ border: 2px solid {t.focus}; }}
QListView#culture_tree, QListView#culture_tree:focus {{ background: {t.ground}; border: none;
  border-radius: 0; }}
QTreeView::item {{ min-height: {TOUCH - 4}px; padding: 0 5px; }}
QHeaderView::section {{ background: {t.surface}; color: {t.muted}; border: none;
  border-bottom: 1px solid {t.line}; padding: 6px 8px; font-weight: 600; }}
QScrollArea {{ background: transparent; border: none; }}
QScrollArea > QWidget > QWidget {{ background: transparent; }}
QScrollBar:vertical {{ background: transparent; width: 12px; margin: 0; }}
QScrollBar:horizontal {{ background: transparent; height: 12px; margin: 0; }}
QScrollBar::handle {{ background: {t.edge}; border-radius: 4px; margin: 2px; min-height: 32px;
  min-width: 32px; }}
QScrollBar::add-line, QScrollBar::sub-line {{ width: 0; height: 0; }}
QScrollBar::add-page, QScrollBar::sub-page {{ background: transparent; }}

QAbstractScrollArea::corner {{ background: transparent; border: none; }}

QMenuBar {{ background: {t.surface}; color: {t.ink}; border-bottom: 1px solid {t.line}; }}
QMenuBar::item {{ padding: 7px 12px; background: transparent; }}
QMenuBar::item:selected {{ background: {t.accent_soft}; }}
QMenu {{ background: {t.surface}; color: {t.ink}; border: 1px solid {t.edge}; padding: 4px; }}
QMenu::item {{ padding: 8px 28px 8px 20px; border-radius: 4px; }}
QMenu::item:selected {{ background: {t.accent_soft}; }}
QMenu::item:disabled {{ color: {t.muted}; }}
QMenu::separator {{ height: 1px; background: {t.line}; margin: 4px 8px; }}
QSplitter::handle {{ background: {t.line}; }}
QStatusBar {{ background: {t.surface}; color: {t.muted}; }}
QProgressBar {{ background: {t.sunken}; border: 1px solid {t.edge}; border-radius: 6px;
  text-align: center; min-height: 18px; }}
QProgressBar::chunk {{ background: {t.accent}; border-radius: 5px; }}
"""
