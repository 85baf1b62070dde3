using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace GigRig.Data.Migrations
{
    /// <inheritdoc />
    public partial class Ownership : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<DateOnly>(
                name: "BackOn",
                table: "Supplies",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "Guesses",
                table: "Supplies",
                type: "TEXT",
                nullable: false,
                defaultValue: "[]");

            migrationBuilder.AddColumn<string>(
                name: "LentTo",
                table: "Supplies",
                type: "TEXT",
                nullable: false,
                defaultValue: "");

            migrationBuilder.AddColumn<string>(
                name: "Tags",
                table: "Supplies",
                type: "TEXT",
                nullable: false,
                defaultValue: "[]");

            migrationBuilder.AddColumn<DateOnly>(
                name: "BackOn",
                table: "OffBoard",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "Guesses",
                table: "OffBoard",
                type: "TEXT",
                nullable: false,
                defaultValue: "[]");

            migrationBuilder.AddColumn<string>(
                name: "LentTo",
                table: "OffBoard",
                type: "TEXT",
                nullable: false,
                defaultValue: "");

            migrationBuilder.AddColumn<string>(
                name: "Tags",
                table: "OffBoard",
                type: "TEXT",
                nullable: false,
                defaultValue: "[]");

            migrationBuilder.AddColumn<DateOnly>(
                name: "BackOn",
                table: "Leads",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "Guesses",
                table: "Leads",
                type: "TEXT",
                nullable: false,
                defaultValue: "[]");

            migrationBuilder.AddColumn<string>(
                name: "LentTo",
                table: "Leads",
                type: "TEXT",
                nullable: false,
                defaultValue: "");

            migrationBuilder.AddColumn<string>(
                name: "Tags",
                table: "Leads",
                type: "TEXT",
                nullable: false,
                defaultValue: "[]");

            migrationBuilder.AddColumn<DateOnly>(
                name: "BackOn",
                table: "Instruments",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "Guesses",
                table: "Instruments",
                type: "TEXT",
                nullable: false,
                defaultValue: "[]");

            migrationBuilder.AddColumn<string>(
                name: "LentTo",
                table: "Instruments",
                type: "TEXT",
                nullable: false,
                defaultValue: "");

            migrationBuilder.AddColumn<string>(
                name: "Tags",
                table: "Instruments",
                type: "TEXT",
                nullable: false,
                defaultValue: "[]");

            migrationBuilder.AddColumn<DateOnly>(
                name: "BackOn",
                table: "Devices",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "Guesses",
                table: "Devices",
                type: "TEXT",
                nullable: false,
                defaultValue: "[]");

            migrationBuilder.AddColumn<string>(
                name: "LentTo",
                table: "Devices",
                type: "TEXT",
                nullable: false,
                defaultValue: "");

            migrationBuilder.AddColumn<string>(
                name: "Tags",
                table: "Devices",
                type: "TEXT",
                nullable: false,
                defaultValue: "[]");

            migrationBuilder.AddColumn<DateOnly>(
                name: "BackOn",
                table: "Boards",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "Guesses",
                table: "Boards",
                type: "TEXT",
                nullable: false,
                defaultValue: "[]");

            migrationBuilder.AddColumn<string>(
                name: "LentTo",
                table: "Boards",
                type: "TEXT",
                nullable: false,
                defaultValue: "");

            migrationBuilder.AddColumn<string>(
                name: "Tags",
                table: "Boards",
                type: "TEXT",
                nullable: false,
                defaultValue: "[]");

            migrationBuilder.AddColumn<DateOnly>(
                name: "BackOn",
                table: "Amps",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "Guesses",
                table: "Amps",
                type: "TEXT",
                nullable: false,
                defaultValue: "[]");

            migrationBuilder.AddColumn<string>(
                name: "LentTo",
                table: "Amps",
                type: "TEXT",
                nullable: false,
                defaultValue: "");

            migrationBuilder.AddColumn<string>(
                name: "Tags",
                table: "Amps",
                type: "TEXT",
                nullable: false,
                defaultValue: "[]");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropColumn(
                name: "BackOn",
                table: "Supplies");

            migrationBuilder.DropColumn(
                name: "Guesses",
                table: "Supplies");

            migrationBuilder.DropColumn(
                name: "LentTo",
                table: "Supplies");

            migrationBuilder.DropColumn(
                name: "Tags",
                table: "Supplies");

            migrationBuilder.DropColumn(
                name: "BackOn",
                table: "OffBoard");

            migrationBuilder.DropColumn(
                name: "Guesses",
                table: "OffBoard");

            migrationBuilder.DropColumn(
                name: "LentTo",
                table: "OffBoard");

            migrationBuilder.DropColumn(
                name: "Tags",
                table: "OffBoard");

            migrationBuilder.DropColumn(
                name: "BackOn",
                table: "Leads");

            migrationBuilder.DropColumn(
                name: "Guesses",
                table: "Leads");

            migrationBuilder.DropColumn(
                name: "LentTo",
                table: "Leads");

            migrationBuilder.DropColumn(
                name: "Tags",
                table: "Leads");

            migrationBuilder.DropColumn(
                name: "BackOn",
                table: "Instruments");

            migrationBuilder.DropColumn(
                name: "Guesses",
                table: "Instruments");

            migrationBuilder.DropColumn(
                name: "LentTo",
                table: "Instruments");

            migrationBuilder.DropColumn(
                name: "Tags",
                table: "Instruments");

            migrationBuilder.DropColumn(
                name: "BackOn",
                table: "Devices");

            migrationBuilder.DropColumn(
                name: "Guesses",
                table: "Devices");

            migrationBuilder.DropColumn(
                name: "LentTo",
                table: "Devices");

            migrationBuilder.DropColumn(
                name: "Tags",
                table: "Devices");

            migrationBuilder.DropColumn(
                name: "BackOn",
                table: "Boards");

            migrationBuilder.DropColumn(
                name: "Guesses",
                table: "Boards");

            migrationBuilder.DropColumn(
                name: "LentTo",
                table: "Boards");

            migrationBuilder.DropColumn(
                name: "Tags",
                table: "Boards");

            migrationBuilder.DropColumn(
                name: "BackOn",
                table: "Amps");

            migrationBuilder.DropColumn(
                name: "Guesses",
                table: "Amps");

            migrationBuilder.DropColumn(
                name: "LentTo",
                table: "Amps");

            migrationBuilder.DropColumn(
                name: "Tags",
                table: "Amps");
        }
    }
}
