using GigRig.Web;
using Microsoft.Playwright;

namespace GigRig.Browser.Tests.Harness;

/// <summary>What a musician does again and again, by what the buttons say.</summary>
internal static class Visits
{
    /// <summary>Most presses of Tab that a main action may be away from the top of its page.</summary>
    private const int FewTabs = 20;

    extension(IPage page)
    {
        public ILocator Button(string name) => page.GetByRole(AriaRole.Button, new() { Name = name, Exact = true });

        public ILocator Link(string name) => page.GetByRole(AriaRole.Link, new() { Name = name, Exact = true });

        public ILocator Heading(string name) => page.GetByRole(AriaRole.Heading, new() { Name = name, Exact = true });

        /// <summary>Opens a page of the app and waits until its buttons do something.</summary>
        public async Task OpenAsync(string url)
        {
            await page.GotoAsync(url);
            await page.WaitForSelectorAsync(".gr-shell[data-interactive=true]");
        }

        /// <summary>From the first start to a library with the demo gear in it.</summary>
        public async Task LookAroundAsync()
        {
            await page.OpenAsync(GigRigUrls.Home);
            await page.Button("Look around with a demo library").ClickAsync();
            await page.Heading("Plan a rig").WaitForAsync();
        }

        /// <summary>Asks for a rig and waits for the verdict, whatever it is.</summary>
        public async Task ProposeAsync(string eventType)
        {
            await page.OpenAsync(GigRigUrls.Home);
            await page.Link($"Plan {eventType}").ClickAsync();
            await page.Button("Propose a rig").ClickAsync();
            await page.Locator(".plan-verdict").WaitForAsync();
        }

        /// <summary>Presses Tab until the control with this name has the focus; false where it does not come within a few presses.</summary>
        public async Task<bool> TabToAsync(string name, int most = FewTabs)
        {
            for (var presses = 0; presses < most; presses++)
            {
                await page.Keyboard.PressAsync("Tab");
                var focused = await page.EvaluateAsync<string>("document.activeElement?.getAttribute('aria-label') ?? document.activeElement?.innerText ?? ''");
                if (focused.Trim() == name)
                    return true;
            }

            return false;
        }
    }
}
