#!/usr/bin/python3
"""A window of WebKitGTK that WebKitWebDriver can drive and whose storage outlives it.

The packaged MiniBrowser forgets everything under automation, so it cannot show that a log survives a restart.
Usage: webkit-persistent.py --profile=DIR --features=A,B
"""
import sys

import gi

gi.require_version("Gtk", "3.0")
gi.require_version("WebKit2", "4.1")
from gi.repository import Gtk, WebKit2  # noqa: E402

options = dict(arg[2:].split("=", 1) for arg in sys.argv[1:] if arg.startswith("--") and "=" in arg)
profile = options["profile"]
wanted = set(filter(None, options.get("features", "").split(",")))

manager = WebKit2.WebsiteDataManager(
    base_data_directory=f"{profile}/data", base_cache_directory=f"{profile}/cache"
)
context = WebKit2.WebContext(website_data_manager=manager)
context.set_automation_allowed(True)

settings = WebKit2.Settings()
features = WebKit2.Settings.get_all_features()
for feature in (features.get(i) for i in range(features.get_length())):
    if feature.get_identifier() in wanted:
        settings.set_feature_enabled(feature, True)


def allow(_view, request):
    request.allow()
    return True


def grant(_view, query):
    query.finish(WebKit2.PermissionState.GRANTED)
    return True


def open_view(_session):
    view = WebKit2.WebView(web_context=context, settings=settings, is_controlled_by_automation=True)
    view.connect("permission-request", allow)
    view.connect("query-permission-state", grant)
    window = Gtk.Window(default_width=390, default_height=844)
    window.add(view)
    window.show_all()
    view.connect("close", lambda _view: window.destroy())
    window.connect("destroy", lambda _window: Gtk.main_quit())
    return view


def begin(_context, session):
    info = WebKit2.ApplicationInfo()
    info.set_name("webkit-persistent")
    info.set_version(WebKit2.MAJOR_VERSION, WebKit2.MINOR_VERSION, WebKit2.MICRO_VERSION)
    session.set_application_info(info)
    session.connect("create-web-view", open_view)


context.connect("automation-started", begin)
Gtk.main()
