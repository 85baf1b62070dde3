using GigRig.Web.Shared.Help;

namespace GigRig.Web;

/// <summary>Every address of the app. Nothing else spells one out.</summary>
public static class GigRigUrls
{
    public const string Home = "/";
    public const string Gear = "/gear";
    public const string GearTable = "/gear/table";
    public const string GearItemRoute = "/gear/{Kind}/{Id}";
    public const string GearPhotoRoute = "/gear/{Id:guid}/photo.jpg";
    public const string Events = "/events";
    public const string EventTypeRoute = "/events/{Id}";
    public const string Plan = "/plan";
    public const string Rigs = "/rigs";
    public const string RigRoute = "/rigs/{Id:guid}";
    public const string RigBoardRoute = "/rigs/{Id:guid}/board";
    public const string RigHistoryRoute = "/rigs/{Id:guid}/history";
    public const string RigVersionRoute = "/rigs/{Id:guid}/history/{Number:int}";
    public const string RigSwapRoute = "/rigs/{Id:guid}/swap";
    public const string RigCopyRoute = "/rigs/{Id:guid}/copy";
    public const string Glossary = "/words";
    public const string Library = "/library";
    public const string LibraryFile = "/library/file";
    public const string SharedRoute = "/s/{Token}";
    public const string SharedPictureRoute = "/s/{Token}/picture.png";
    public const string SharedOtherwise = "/s/{**anything}";
    public const string ApiPlan = "/api/v1/plan";
    public const string OpenApi = "/openapi/v1.json";
    public const string ApiSchema = "/api/v1/schema/rig-problem";
    public const string HealthLive = "/health/live";
    public const string HealthReady = "/health/ready";
    public const string Error = "/error";
    public const string NotFound = "/not-found";

    /// <summary>Stands where an id would, on the page that adds a new thing.</summary>
    public const string New = "new";

    /// <summary>Name of the query parameter that picks an event type on the planning page.</summary>
    public const string PlanEventKey = "event";

    /// <summary>Names of the query parameters that say which two rigs a swap list is between.</summary>
    public const string SwapFromKey = "from";
    public const string SwapToKey = "to";

    private const string SharedPrefix = "/s/";
    private const string ApiPrefix = "/api/";

    /// <param name="kind">Word of the kind of gear as it stands in addresses, such as <c>device</c>.</param>
    public static string GearItem(string kind, Guid id) => $"{Gear}/{kind}/{id}";

    /// <param name="savedUtc">Makes the address of each photo its own, so that browsers may keep it.</param>
    public static string GearPhoto(Guid id, DateTime savedUtc) => FormattableString.Invariant($"{Gear}/{id}/photo.jpg?v={savedUtc.Ticks}");

    public static string NewGear(string kind) => $"{Gear}/{kind}/{New}";

    public static string EventType(Guid id) => $"{Events}/{id}";

    public static string NewEventType => $"{Events}/{New}";

    /// <summary>The planning page with an event type already picked.</summary>
    public static string PlanFor(Guid eventType) => $"{Plan}?{PlanEventKey}={eventType}";

    public static string Rig(Guid id) => $"{Rigs}/{id}";

    /// <summary>The workbench: the board of a rig, arranged by hand.</summary>
    public static string RigBoard(Guid id) => $"{Rig(id)}/board";

    /// <summary>Where a word of the glossary is explained.</summary>
    public static string Word(string word) => $"{Glossary}#{WordAnchor.Of(word)}";

    public static string RigHistory(Guid id) => $"{Rig(id)}/history";

    public static string RigVersion(Guid id, int number) => $"{RigHistory(id)}/{number}";

    public static string RigSwap(Guid id) => $"{Rig(id)}/swap";

    /// <summary>What changed between a version and the rig as it is.</summary>
    public static string RigSwap(Guid id, int from) => $"{RigSwap(id)}?{SwapFromKey}={from}&{SwapToKey}=now";

    /// <summary>A rig as one file, with what was ticked in it.</summary>
    public static string RigCopy(Guid id, bool notes, bool values, bool places) =>
        $"{Rig(id)}/copy?notes={Said(notes)}&values={Said(values)}&places={Said(places)}";

    public static string SharedPicture(string token) => $"{Shared(token)}/picture.png";

    public static string Shared(string token) => SharedPrefix + token;

    public static bool IsShared(PathString path) => path.StartsWithSegments(SharedPrefix.TrimEnd('/'));

    public static bool IsApi(PathString path) => path.StartsWithSegments(ApiPrefix.TrimEnd('/'));

    private static string Said(bool ticked) => ticked ? "true" : "false";
}
