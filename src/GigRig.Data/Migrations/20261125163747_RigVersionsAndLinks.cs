using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace GigRig.Data.Migrations
{
    /// <inheritdoc />
    public partial class RigVersionsAndLinks : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.RenameColumn(
                name: "LastOpenedUtc",
                table: "ShareLinks",
                newName: "LastOpenedOn");

            migrationBuilder.AddColumn<int>(
                name: "FrozenVersion",
                table: "ShareLinks",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.AddColumn<bool>(
                name: "ShowsNotes",
                table: "ShareLinks",
                type: "INTEGER",
                nullable: false,
                defaultValue: false);

            migrationBuilder.AddColumn<bool>(
                name: "ShowsPlaces",
                table: "ShareLinks",
                type: "INTEGER",
                nullable: false,
                defaultValue: false);

            migrationBuilder.AddColumn<bool>(
                name: "ShowsValues",
                table: "ShareLinks",
                type: "INTEGER",
                nullable: false,
                defaultValue: false);

            migrationBuilder.AddColumn<string>(
                name: "Unit",
                table: "ShareLinks",
                type: "TEXT",
                nullable: false,
                defaultValue: "Millimetres");

            // Links kept the very second before; the day is all that is kept from now on.
            migrationBuilder.Sql("""UPDATE "ShareLinks" SET "LastOpenedOn" = substr("LastOpenedOn", 1, 10) WHERE "LastOpenedOn" IS NOT NULL;""");

            migrationBuilder.CreateTable(
                name: "RigVersions",
                columns: table => new
                {
                    OwnerId = table.Column<Guid>(type: "TEXT", nullable: false),
                    RigId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Number = table.Column<int>(type: "INTEGER", nullable: false),
                    Name = table.Column<string>(type: "TEXT", nullable: false),
                    DeviceCount = table.Column<int>(type: "INTEGER", nullable: false),
                    ProblemJson = table.Column<string>(type: "TEXT", nullable: false),
                    RigJson = table.Column<string>(type: "TEXT", nullable: false),
                    SavedUtc = table.Column<DateTime>(type: "TEXT", nullable: false),
                    Version = table.Column<int>(type: "INTEGER", nullable: false),
                    CreatedUtc = table.Column<DateTime>(type: "TEXT", nullable: false),
                    ChangedUtc = table.Column<DateTime>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_RigVersions", x => new { x.OwnerId, x.RigId, x.Number });
                    table.ForeignKey(
                        name: "FK_RigVersions_Rigs_OwnerId_RigId",
                        columns: x => new { x.OwnerId, x.RigId },
                        principalTable: "Rigs",
                        principalColumns: new[] { "OwnerId", "Id" },
                        onDelete: ReferentialAction.Cascade);
                });

            // The history of a rig begins with what it is now.
            migrationBuilder.Sql("""
                INSERT INTO "RigVersions" ("OwnerId", "RigId", "Number", "Name", "DeviceCount", "ProblemJson", "RigJson", "SavedUtc", "Version", "CreatedUtc", "ChangedUtc")
                SELECT "OwnerId", "Id", "Version", "Name", "DeviceCount", "ProblemJson", "RigJson", "SavedUtc", 1, "SavedUtc", "SavedUtc" FROM "Rigs";
                """);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "RigVersions");

            migrationBuilder.DropColumn(
                name: "FrozenVersion",
                table: "ShareLinks");

            migrationBuilder.DropColumn(
                name: "ShowsNotes",
                table: "ShareLinks");

            migrationBuilder.DropColumn(
                name: "ShowsPlaces",
                table: "ShareLinks");

            migrationBuilder.DropColumn(
                name: "ShowsValues",
                table: "ShareLinks");

            migrationBuilder.DropColumn(
                name: "Unit",
                table: "ShareLinks");

            migrationBuilder.RenameColumn(
                name: "LastOpenedOn",
                table: "ShareLinks",
                newName: "LastOpenedUtc");
        }
    }
}
