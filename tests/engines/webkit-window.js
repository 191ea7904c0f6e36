// A window around WebKitGTK that a driver can steer and that keeps its data in a folder, which Debian's MiniBrowser
// does not when it is steered: gjs -m webkit-window.js FOLDER [SCRIPT]. Runs in gjs, not in Node.
import Gtk from 'gi://Gtk?version=3.0';
import WebKit from 'gi://WebKit2?version=4.1';

const [folder, beforeLoad] = ARGV;
const scripts = new WebKit.UserContentManager();
if (beforeLoad) {
  const { ALL_FRAMES } = WebKit.UserContentInjectedFrames;
  const { START } = WebKit.UserScriptInjectionTime;
  scripts.add_script(new WebKit.UserScript(beforeLoad, ALL_FRAMES, START, null, null));
}

Gtk.init(null);
const context = WebKit.WebContext.new_with_website_data_manager(
  new WebKit.WebsiteDataManager({
    base_data_directory: `${folder}/data`,
    base_cache_directory: `${folder}/cache`,
  }),
);
context.set_automation_allowed(true);
context.connect('download-started', (_, download) =>
  download.connect('decide-destination', (_, name) => {
    download.set_destination(`file://${folder}/downloads/${name}`);
    return true;
  }),
);

let shown = 0;
const openWindow = () => {
  const view = new WebKit.WebView({
    web_context: context,
    user_content_manager: scripts,
    is_controlled_by_automation: true,
    settings: new WebKit.Settings({ enable_write_console_messages_to_stdout: true }),
  });
  const window = new Gtk.Window({ default_width: 1280, default_height: 800 });
  view.connect('close', () => window.destroy());
  window.connect('destroy', () => {
    shown -= 1;
    if (shown === 0) Gtk.main_quit();
  });
  window.add(view);
  window.show_all();
  shown += 1;
  return view;
};

context.connect('automation-started', (_, session) => {
  const info = new WebKit.ApplicationInfo();
  info.set_name('WebKitGTK');
  info.set_version(WebKit.get_major_version(), WebKit.get_minor_version(), WebKit.get_micro_version());
  session.set_application_info(info);
  session.connect('create-web-view', openWindow);
});
Gtk.main();
